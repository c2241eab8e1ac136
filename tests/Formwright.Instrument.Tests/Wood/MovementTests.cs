using Formwright.Design.Sections;
using Formwright.Instrument.Wood;
using Xunit;

namespace Formwright.Instrument.Tests.Wood;

public sealed class MovementTests
{
    // Wood Handbook FPL-GTR-282 (2021), the example of eq. 13-2: 232 mm of white fir (.00245 tangential, .00112 radial), 8 to 11 %.
    [Theory]
    [InlineData(0.00245, 1.7052)]
    [InlineData(0.00112, 0.77952)]
    public void MeetsTheExampleOfEquation132(double coefficient, double change)
    {
        Assert.Equal(change, Movement.ChangeMm(232, coefficient, 8, 11), 1e-9);
        Assert.Equal(-change, Movement.ChangeMm(232, coefficient, 11, 8), 1e-9);
    }

    // C = (S/F)/(1 - S(F-10)/F) from the shrinkages of table 4-3.
    [Theory]
    [InlineData(Species.SitkaSpruce, 0.00147563, 0.00263158)]
    [InlineData(Species.EngelmannSpruce, 0.00129959, 0.00248425)]
    [InlineData(Species.WesternRedcedar, 0.00110538, 0.00233645)]
    public void CoefficientsFollowFromShrinkage(Species species, double radial, double tangential)
    {
        SpeciesFigures row = SpeciesTable.Of(species);
        Assert.Equal(radial, row.RadialPerPercent, 5e-9);
        Assert.Equal(tangential, row.TangentialPerPercent, 5e-9);
        Assert.False(row.HasPublishedCoefficients);
    }

    // Printed in table 13-5.
    [Theory]
    [InlineData(Species.WhiteAsh, 0.00169, 0.00274)]
    [InlineData(Species.YellowBirch, 0.00256, 0.00338)]
    [InlineData(Species.SugarMaple, 0.00165, 0.00353)]
    [InlineData(Species.BlackWalnut, 0.00190, 0.00274)]
    public void PrintedCoefficientsAreTaken(Species species, double radial, double tangential)
    {
        SpeciesFigures row = SpeciesTable.Of(species);
        Assert.Equal(radial, row.RadialPerPercent);
        Assert.Equal(tangential, row.TangentialPerPercent);
        Assert.True(row.HasPublishedCoefficients);
    }

    // For these species both tables exist: C from table 4-3 must lie within 5 % of the C printed in table 13-5.
    [Theory]
    [InlineData(0.049, 0.00169)]
    [InlineData(0.078, 0.00274)]
    [InlineData(0.073, 0.00256)]
    [InlineData(0.095, 0.00338)]
    [InlineData(0.048, 0.00165)]
    [InlineData(0.099, 0.00353)]
    [InlineData(0.055, 0.00190)]
    public void DerivedCoefficientsMeetThePrintedOnes(double shrinkage, double printed) =>
        Assert.Equal(1, Movement.CoefficientOf(shrinkage, 30) / printed, 0.05);

    [Fact]
    public void EverySpeciesHasAWholeRowAndANameInBothLanguages()
    {
        Assert.Equal(Enum.GetValues<Species>(), SpeciesTable.All.Select(row => row.Species));
        foreach (SpeciesFigures row in SpeciesTable.All)
        {
            Assert.InRange(row.DensityKgPerM3, 300, 1200);
            Assert.InRange(row.ModulusLongMPa, 7000, 20000);
            Assert.True(row.TangentialPerPercent > row.RadialPerPercent, row.Name);
            Assert.InRange(row.Ratios.RL, row.Ratios.TL, 0.2);
            foreach (
                string source in new[]
                {
                    row.DensitySource,
                    row.ModulusSource,
                    row.ShrinkageSource,
                    row.RatioSource,
                }
            )
            {
                Assert.True(InstrumentWords.Of.Has($"wood-source.{source}"), source);
            }
        }
    }

    // Sitka spruce: 0.36 · 1000 · 1.12 (specific gravity on volume at 12 %); E_L = 1.10 · 9.9 GPa.
    [Fact]
    public void SitkaIsAsPrinted()
    {
        SpeciesFigures row = SpeciesTable.Of(Species.SitkaSpruce);
        Assert.Equal(403.2, row.DensityKgPerM3, 0.5);
        Assert.Equal(10890, row.ModulusLongMPa, 1e-6);
    }
}
