using Formwright.Instrument;
using Formwright.Instrument.Action;
using static Formwright.Web.Components.Board.OutlineDrawing;

namespace Formwright.Web.Components.Board;

/// <summary>Neck and action from the side, laid out on the page: lengths true to each other, heights exaggerated; 1 unit is 1 pixel.</summary>
internal sealed class ActionDrawing
{
    private static readonly double[] Exaggerations = [20, 15, 12, 10, 8, 6, 5, 4, 3, 2, 1];

    private readonly Guitar guitar;
    private readonly HeightChain chain;
    private readonly NeckAndAction action;

    public ActionDrawing(
        Guitar guitar,
        NeckAndAction action,
        bool isStrung,
        double width,
        double height
    )
    {
        this.guitar = guitar;
        this.action = action;
        chain = isStrung ? action.Strung : action.OnBoard;
        Width = Math.Max(width, 360);
        Height = Math.Max(height, 480);
        Left = 70;
        Scale = (Width - Left - 56) / guitar.TailMm;
        double room = (Height * 0.46) - 150;
        Heights = Exaggerations.FirstOrDefault(
            times => (TopMm + Math.Max(0, -LowMm)) * Scale * times <= room,
            1
        );
        Datum = 96 + (TopMm * Scale * Heights);
    }

    public double Width { get; }

    public double Height { get; }

    public double Left { get; }

    /// <summary>Pixels per mm along.</summary>
    public double Scale { get; }

    /// <summary>How many times true the heights are.</summary>
    public double Heights { get; }

    /// <summary>Where the datum stands.</summary>
    public double Datum { get; }

    public HeightChain Chain => chain;

    public double SaddleXMm =>
        0.5 * (action.Model.Geometry.SaddleMm[0] + action.Model.Geometry.SaddleMm[^1]);

    public double SaddleTopMm => 0.5 * (chain.Bass.SaddleTopMm + chain.Treble.SaddleTopMm);

    public double NutStringMm => 0.5 * (chain.Bass.NutMm + chain.Treble.NutMm);

    public double JoinXMm => guitar.JoinMm;

    public double Fret12XMm => action.Model.Geometry.ActionFretMm;

    public IReadOnlyList<double> FretsMm => action.Model.Geometry.FretsMm;

    public double FretHeightMm => action.Model.Figures.FretHeightMm;

    public double NeckMm => chain.NeckMm;

    private double TopMm => Math.Max(SaddleTopMm, NutStringMm);

    private double LowMm => Math.Min(0, NeckMm);

    public double X(double xMm) => Left + (xMm * Scale);

    public double Y(double zMm) => Datum - (zMm * Scale * Heights);

    /// <summary>Crown of a fret, middle of the outermost strings, mm over the datum.</summary>
    public double FretMm(int fret) => 0.5 * (chain.Bass.FretMm[fret] + chain.Treble.FretMm[fret]);

    /// <summary>The fingerboard: its top through the frets, its bottom on neck and soundboard.</summary>
    public string Board()
    {
        List<string> points = [];
        for (int i = 0; i < FretsMm.Count; i++)
        {
            points.Add(At(FretsMm[i], FretMm(i) - FretHeightMm));
        }

        points.Add(At(FretsMm[^1] + 4, FretMm(FretsMm.Count - 1) - FretHeightMm));
        points.Add(At(FretsMm[^1] + 4, DomeMm(FretsMm[^1] + 4)));
        points.Add(At(JoinXMm, 0));
        points.Add(At(0, NeckMm));
        return "M" + string.Join('L', points) + "Z";
    }

    /// <summary>The soundboard on the centreline, from join to tail; strung, as high as it stands under the saddle.</summary>
    public string Soundboard()
    {
        IEnumerable<string> points = Enumerable
            .Range(0, 81)
            .Select(i => JoinXMm + ((guitar.TailMm - JoinXMm) * i / 80))
            .Select(x => At(x, DomeMm(x)));
        return "M" + string.Join('L', points);
    }

    public string FretPlane() =>
        "M"
        + string.Join(
            'L',
            Enumerable.Range(0, FretsMm.Count).Select(i => At(FretsMm[i], FretMm(i)))
        );

    /// <summary>The soundboard on the centreline, mm over the datum.</summary>
    public double DomeMm(double xMm) => action.SoundboardMm(guitar, chain, xMm);

    private string At(double xMm, double zMm) => $"{N(X(xMm))} {N(Y(zMm))}";
}
