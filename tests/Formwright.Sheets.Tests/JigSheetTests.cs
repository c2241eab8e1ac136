using Formwright.Design;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Brackets;
using Formwright.Sheets.Brackets;
using Formwright.Testing;
using Xunit;

namespace Formwright.Sheets.Tests;

public sealed class JigSheetTests
{
    [Theory]
    [InlineData("en", "heron")]
    [InlineData("es", "plover")]
    [InlineData("en", "dunlin")]
    [InlineData("es", "dunlin")]
    [InlineData("en", "plover", "dunlin", "heron")]
    [InlineData("es", "heron", "dunlin", "plover")]
    public void No_sheet_has_a_flaw(string language, params string[] models)
    {
        NamedSheet[] sheets = Flaws.NoneIn(language, () => JigSheets.Numbered(Plan(models)));
        Assert.Equal(2 + models.Length, sheets.Length);
    }

    [Fact]
    public void The_setting_sheet_shows_every_face_at_true_size_bass_on_the_right()
    {
        JigPlan plan = Plan("heron");
        NamedSheet named = JigSheets.Of(plan)[2];
        Assert.True(named.IsTiled);
        View view = named.Sheet.Items.OfType<View>().First();
        Assert.Equal(1, view.Scale);
        foreach (BracketSetting setting in plan.Members[0].Settings)
        {
            (Curves.Point a, Curves.Point b) = JigItems.Face(setting);
            double face = plan.Shape.FaceWidthMm(setting.Contact.Face);
            Curves.Point onSheet = view.Placement.Apply(a);
            Assert.Equal(face, onSheet.DistanceTo(view.Placement.Apply(b)), 1e-9);

            // Neck up, instrument face down: the bass half of the board is right of the centreline.
            Assert.True(onSheet.X > view.Placement.Apply(Curves.Point.Origin).X);
        }
    }

    private static JigPlan Plan(params string[] models)
    {
        Guitar[] guitars =
        [
            .. models.Select(model =>
                Guitar
                    .Build(DesignText.Load(Repository.PathOf("examples", $"{model}.toml")).Design!)
                    .Guitar!
            ),
        ];
        return JigMaker.Of(guitars, guitars[0].Design.Jig);
    }
}
