using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Layers;

namespace DiagRules.Packs.Binding;

/// <summary>Turns the trees of a pack into its entries.</summary>
internal sealed class PackBinder(Draft draft)
{
    private ImmutableArray<Check> _questions = [];
    private ImmutableArray<Repair> _restores = [];

    /// <summary>Declares and binds all entries; afterwards each <see cref="Declared.Entry"/> is the entry, or nothing where it was refused.</summary>
    public void Bind(Layered pack)
    {
        new Declaration(draft).Declare(pack);
        foreach (var declared in draft.All)
        {
            Watch(declared, () => Outline(declared));
        }

        new ImpliedSteps(draft).Mark();
        BindSection(Section.Parameters, new ParameterBinder(draft));
        BindReadings();
        BindSection(Section.Findings, new FindingBinder(draft));
        BindSection(Section.Effects, new EffectBinder(draft));
        var causes = new CauseBinder(draft);
        BindSection(Section.Causes, causes);
        BindSection(Section.Preconditions, causes);
        BindSection(Section.Complaints, new ComplaintBinder(draft));
        BindSection(Section.Rules, new RuleBinder(draft));
        var work = new WorkBinder(draft);
        BindSection(Section.Checks, work);
        BindSection(Section.Access, work);
        BindSection(Section.Hazards, new HazardBinder(draft));
        BindSection(Section.Repairs, work);
        var implied = new ImpliedSteps(draft);
        _questions = [.. implied.Questions(draft.Of(Section.Checks).Length)];
        _restores = [.. implied.Restores(draft.Of(Section.Repairs).Length)];
    }

    /// <summary>The pack. Only to be asked for when nothing was refused.</summary>
    public Pack Build(Head head, ImmutableArray<RecordedCase> cases)
    {
        ImmutableArray<Cause> causes = [.. Entries<Cause>(Section.Causes), .. Entries<Cause>(Section.Preconditions)];
        var (effects, findings) = (Entries<Effect>(Section.Effects), Entries<Finding>(Section.Findings));
        return new Pack
        {
            Id = head.Id,
            Version = head.Version,
            Title = head.Title,
            Place = head.Place,
            Chassis = draft.Chassis,
            Language = head.Language,
            LabourPerHour = head.LabourPerHour,
            Currency = draft.Money.Currency,
            SpecialistCost = head.SpecialistCost ?? new Expense(Pack.DefaultSpecialistMinutes, 0),
            Unlisted = head.Unlisted,
            Coexistence = head.Coexistence ?? 0.05,
            Trust = head.Trust,
            Acceptance = head.Acceptance,
            Accepts = head.Accepts,
            HostKeys = HostKeys.Read(head.Tree),
            Systems = draft.Systems.ToImmutableDictionary(StringComparer.Ordinal),
            Calculations = draft.Calculations,
            Readings = Entries<Reading>(Section.Readings),
            Findings = findings,
            Effects = effects,
            Causes = causes,
            Nodes = [.. causes, .. effects, .. findings],
            Parameters = Entries<Parameter>(Section.Parameters),
            Complaints = Entries<Complaint>(Section.Complaints),
            Rules = Entries<Rule>(Section.Rules),
            Checks = [.. Entries<Check>(Section.Checks), .. _questions],
            Access = Entries<Access>(Section.Access),
            Hazards = Entries<Hazard>(Section.Hazards),
            Repairs = [.. Entries<Repair>(Section.Repairs), .. _restores],
            Cases = cases,
        };
    }

    private ImmutableArray<T> Entries<T>(string section)
        where T : Entry => [.. draft.Of(section).Select(declared => declared.Entry).OfType<T>()];

    /// <summary>What conditions need to know of an entry before it is made: its kind, its number, its grades.</summary>
    private void Outline(Declared declared)
    {
        var fields = new Fields(draft, declared, declared.Body);
        declared.Only = EntryBase.Only(draft, declared.Body);
        declared.Accepts = EntryBase.Accepts(fields, draft.Problems);
        if (declared.IsGraded)
        {
            declared.Grades = GradesReader.Read(draft, declared);
        }

        declared.Entry = declared.Section switch
        {
            Section.Findings or Section.Effects when declared.Grades.IsEmpty => null,
            Section.Findings => new Finding { Id = declared.Id, Index = declared.Index, Title = "", Grades = declared.Grades, Node = declared.Node },
            Section.Effects => new Effect { Id = declared.Id, Index = declared.Index, Title = "", Grades = declared.Grades, Node = declared.Node },
            Section.Causes => new Cause { Id = declared.Id, Index = declared.Index, Title = "", Grades = declared.Grades, Node = declared.Node },
            Section.Preconditions => new Cause
            {
                Id = declared.Id,
                Index = declared.Index,
                Title = "",
                Grades = declared.Grades,
                Node = declared.Node,
                Precondition = new Precondition(new Constant(Truth.Unknown, "", declared.Place), null, null),
            },
            Section.Complaints => new Complaint { Id = declared.Id, Index = declared.Index, Title = "" },
            Section.Rules => new Rule { Id = declared.Id, Index = declared.Index, Title = "", When = new Constant(Truth.Unknown, "", declared.Place) },
            Section.Checks => new Check { Id = declared.Id, Index = declared.Index, Title = "", Gives = [] },
            Section.Access => new Access { Id = declared.Id, Index = declared.Index, Title = "" },
            Section.Hazards => new Hazard { Id = declared.Id, Index = declared.Index, Title = "", SignalWord = default, Says = "" },
            Section.Repairs => new Repair { Id = declared.Id, Index = declared.Index, Title = "" },
            _ => null,
        };
    }

    private void BindReadings()
    {
        var binder = new ReadingBinder(draft);
        var ordered = ReadingBinder.InOrderOfDependence(draft);
        foreach (var declared in ordered)
        {
            Bind(declared, binder);
        }

        // Circles are reported elsewhere, link by link; what stands in one counts as measured meanwhile.
        foreach (var declared in draft.Of(Section.Readings).Except(ordered))
        {
            declared.IsDamaged = true;
            declared.Entry = new Fields(draft, declared, declared.Body).Text("unit") is { } text && UnitTable.TryGet(text.Value, out var unit)
                ? new Reading { Id = declared.Id, Index = declared.Index, Title = declared.Id, Unit = unit }
                : null;
        }
    }

    private void BindSection(string section, IEntryBinder binder)
    {
        foreach (var declared in draft.Of(section))
        {
            Bind(declared, binder);
        }
    }

    private void Bind(Declared declared, IEntryBinder binder) => Watch(declared, () =>
    {
        var entry = binder.Bind(declared, new Fields(draft, declared, declared.Body));
        declared.Entry = entry is null ? declared.Entry : EntryBase.Finish(entry, declared);
    });

    private void Watch(Declared declared, Action work)
    {
        var before = draft.Problems.Count;
        work();
        declared.IsDamaged |= draft.Problems.Count > before;
    }
}
