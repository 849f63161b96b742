using DiagRules.Results;

namespace DiagRules.Charts.Picture;

/// <summary>One box as a picture: measured when it is made, then drawn where the layout puts it. Lengths are CSS pixels, 1/96 inch.</summary>
internal sealed class BoxPicture
{
    public const double Width = 242;
    private const double Padding = 7;
    private const double Room = Width - (2 * Padding);
    private const double TitleSize = 12, TextSize = 10.5, SmallSize = 9.5;
    private const double BadgeRoom = 26;
    private const string Faint = "#444";

    private readonly List<Action<SvgCanvas, double, double>> _marks = [];
    private readonly bool _isEnd;
    private readonly bool _isRepair;
    private double _stripHeight;

    private BoxPicture(bool isEnd, bool isRepair) => (_isEnd, _isRepair) = (isEnd, isRepair);

    public double Height { get; private set; }

    /// <summary>Where a line comes in, from the top.</summary>
    public double Inlet => _stripHeight > 0 ? _stripHeight / 2 : Height / 2;

    /// <summary>Where the lines go out, from the top.</summary>
    public double Outlet => _stripHeight + ((Height - _stripHeight) / 2);

    /// <summary>A step in full.</summary>
    /// <param name="box">The box.</param>
    /// <param name="step">How it is done, or <see langword="null"/>.</param>
    /// <param name="into">The branch that leads here, with its box, or <see langword="null"/> at the head of a chart.</param>
    /// <param name="onwards">Of a repair what follows when the complaint stays; <see langword="null"/> where a box below says it.</param>
    public static BoxPicture OfBox(ChartBox box, ChartStep? step, (ChartBox Box, ChartBranch Branch)? into, string? onwards)
    {
        var picture = new BoxPicture(isEnd: false, box.Kind == StepKind.Repair);
        picture.AddStrip(into);
        picture.AddHeading(box);
        picture.AddBody(box, step);
        picture.AddWaysOn(box, step, onwards);
        picture.Height += Padding;
        return picture;
    }

    /// <summary>A few words instead of a step: an end, or where to go on.</summary>
    public static BoxPicture OfWords((ChartBox Box, ChartBranch Branch) into, string words, bool isBold)
    {
        var picture = new BoxPicture(isEnd: true, isRepair: false);
        picture.AddStrip(into);
        picture.Height += 4;
        picture.AddText(words, TextSize, isBold);
        picture.Height += Padding;
        return picture;
    }

    public void Draw(SvgCanvas canvas, double x, double y)
    {
        canvas.Rectangle(x, y, Width, Height, _isEnd ? "#f4f4f4" : "#fff", "#222", _isRepair ? 2.4 : 1, _isEnd ? 9 : _isRepair ? 5 : 0);
        foreach (var mark in _marks)
        {
            mark(canvas, x, y);
        }
    }

    private void AddStrip((ChartBox Box, ChartBranch Branch)? into)
    {
        if (into is not { } from)
        {
            Height = 3;
            return;
        }

        _marks.Add((canvas, x, y) => canvas.Path(
            $"M{Lettering.Number(x + 1)} {Lettering.Number(y + _stripHeight)}h{Lettering.Number(Width - 2)}", "none", "#999", 0.8));
        Height = 2;
        AddText($"{Capital(ChartWords.Answers(from.Box, from.Branch))}  ({Words.Percent(from.Branch.Probability)})", TextSize, isBold: true);
        AddText(ChartWords.Limits(from.Branch), SmallSize, fill: Faint);
        _stripHeight = Height += 3;
    }

    private void AddHeading(ChartBox box)
    {
        var top = Height + 4;
        _marks.Add((canvas, x, y) =>
        {
            canvas.Rectangle(x + Padding, y + top, BadgeRoom - 5, 15, "#222", radius: 2);
            canvas.Text(x + Padding + ((BadgeRoom - 5) / 2), y + top + 11.3, box.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), 10.5, true, "#fff", "middle");
        });
        Height += 2;
        AddText(ChartWords.Heading(box), TitleSize, isBold: true, indent: BadgeRoom);
        AddText(ChartWords.Price(box), SmallSize, fill: Faint, indent: BadgeRoom);
    }

    private void AddBody(ChartBox box, ChartStep? step)
    {
        if (!box.Opens.IsEmpty)
        {
            AddText("First: " + string.Join("; ", box.Opens), TextSize);
        }

        foreach (var hazard in box.Hazards)
        {
            AddHazard(hazard);
        }

        foreach (var condition in box.NotWhile)
        {
            AddText("Not while " + condition, SmallSize);
        }

        foreach (var advice in box.Advice)
        {
            AddText("Note: " + advice, SmallSize);
        }

        if (box.Question is { } question && !box.IsSameCheck)
        {
            AddText(question, TextSize, isBold: true);
        }

        if (ChartWords.AsksSeveral(box))
        {
            AddText("The first answer that fits counts, from above.", TextSize, isBold: true);
        }

        foreach (var reading in box.Readings)
        {
            AddText($"{reading.Reading}: {reading.Title}", SmallSize);
        }

        if (box.Kind == StepKind.Repair)
        {
            AddText("Puts right: " + ChartWords.Suspects(box), TextSize);
            AddList("Parts: ", step?.Parts);
            AddList("Fasteners: ", step?.Fasteners);
        }
    }

    private void AddWaysOn(ChartBox box, ChartStep? step, string? onwards)
    {
        if (box.Branches.FirstOrDefault(branch => branch.End == ChartEnd.Cured) is { } cured)
        {
            var proofs = step is { Proofs.IsEmpty: false } ? " Prove it: " + string.Join("; ", step.Proofs.Select(Short)) + "." : "";
            AddText($"Complaint gone ({Words.Percent(cured.Probability)}): done.{proofs}", SmallSize);
        }

        if (onwards is not null)
        {
            AddText(onwards, TextSize, isBold: true);
        }
    }

    private static string Short(ChartProof proof) => proof.Times > 1 ? $"{proof.Check} ({proof.Times} times if it came and went)" : proof.Check;

    private void AddList(string label, IReadOnlyList<string>? texts)
    {
        if (texts is { Count: > 0 })
        {
            AddText(label + string.Join("; ", texts), SmallSize);
        }
    }

    /// <summary>Triangle, signal word with the number of the sign, and what it is.</summary>
    private void AddHazard(HazardNotice hazard)
    {
        const double SignRoom = 15;
        var label = ChartWords.Label(hazard);
        var chip = Lettering.Width(label, SmallSize, true) + 2;
        var (ground, letters) = SignalColours.Of(hazard.SignalWord);
        var top = Height + 3;
        _marks.Add((canvas, x, y) =>
        {
            if (hazard.Symbol is { } symbol && symbol.StartsWith('W'))
            {
                canvas.Path(
                    $"M{Lettering.Number(x + Padding + 6)} {Lettering.Number(y + top + 0.8)}l5.6 10.2h-11.2z", "#f9e300", "#000", 1.1);
            }

            canvas.Rectangle(x + Padding + SignRoom, y + top, chip, 12, ground);
            canvas.Text(x + Padding + SignRoom + (chip / 2), y + top + 9.4, label, SmallSize, true, letters, "middle");
        });
        AddText(ChartWords.Plain(hazard.Hazard), SmallSize, indent: SignRoom + chip + 4);
    }

    private void AddText(string text, double size, bool isBold = false, string fill = "#000", double indent = 0)
    {
        foreach (var line in Lettering.Wrap(text, Room - indent, size, isBold))
        {
            Height += size * 1.28;
            var baseline = Height;
            _marks.Add((canvas, x, y) => canvas.Text(x + Padding + indent, y + baseline, line, size, isBold, fill));
        }
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
