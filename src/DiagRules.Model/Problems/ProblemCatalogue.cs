namespace DiagRules.Model.Problems;

/// <summary>
/// Every problem DiagRules can report. Codes are never reused; the next free number of each range stands beside it.
/// </summary>
public static class ProblemCatalogue
{
    // DR10xx Files and YAML. Next free: DR1013.
    /// <summary>Not valid YAML.</summary>
    public static readonly ProblemDescriptor NotValidYaml = new("DR1001", Severity.Error, "Not valid YAML");

    /// <summary>Tab used for indenting.</summary>
    public static readonly ProblemDescriptor TabForIndenting = new("DR1002", Severity.Error, "Tab used for indenting");

    /// <summary>Duplicate key.</summary>
    public static readonly ProblemDescriptor DuplicateKey = new("DR1003", Severity.Error, "Duplicate key");

    /// <summary>Anchor, alias, merge key or tag.</summary>
    public static readonly ProblemDescriptor AnchorAliasOrTag = new("DR1004", Severity.Error, "Anchor, alias, merge key or tag");

    /// <summary>Key without a value.</summary>
    public static readonly ProblemDescriptor KeyWithoutValue = new("DR1005", Severity.Error, "Key without a value");

    /// <summary>Text cut off by ' #'.</summary>
    public static readonly ProblemDescriptor TextCutOff = new("DR1006", Severity.Error, "Text cut off by ' #'");

    /// <summary>Not UTF-8, or a hidden character.</summary>
    public static readonly ProblemDescriptor NotUtf8OrHiddenCharacter = new("DR1007", Severity.Error, "Not UTF-8, or a hidden character");

    /// <summary>Unresolved merge conflict mark.</summary>
    public static readonly ProblemDescriptor MergeConflictMark = new("DR1008", Severity.Error, "Unresolved merge conflict mark");

    /// <summary>Wrong kind of value.</summary>
    public static readonly ProblemDescriptor WrongKindOfValue = new("DR1009", Severity.Error, "Wrong kind of value");

    /// <summary>Several documents in a section file.</summary>
    public static readonly ProblemDescriptor SeveralDocuments = new("DR1010", Severity.Error, "Several documents in a section file");

    /// <summary>'true', 'false' or 'null'.</summary>
    public static readonly ProblemDescriptor TrueFalseOrNull = new("DR1011", Severity.Error, "'true', 'false' or 'null'");

    /// <summary>File holds no entries.</summary>
    public static readonly ProblemDescriptor NoEntries = new("DR1012", Severity.Note, "File holds no entries");

    // DR11xx The pack and layering. Next free: DR1115.
    /// <summary>No or unreadable 'pack.yaml'.</summary>
    public static readonly ProblemDescriptor NoPackFile = new("DR1101", Severity.Error, "No or unreadable 'pack.yaml'");

    /// <summary>Format version not supported.</summary>
    public static readonly ProblemDescriptor FormatNotSupported = new("DR1102", Severity.Error, "Format version not supported");

    /// <summary>Base pack not found.</summary>
    public static readonly ProblemDescriptor BaseNotFound = new("DR1103", Severity.Error, "Base pack not found");

    /// <summary>No version fits all ranges.</summary>
    public static readonly ProblemDescriptor NoVersionFits = new("DR1104", Severity.Error, "No version fits all ranges");

    /// <summary>Packs extend each other in a circle.</summary>
    public static readonly ProblemDescriptor PacksInCircle = new("DR1105", Severity.Error, "Packs extend each other in a circle");

    /// <summary>Two bases disagree.</summary>
    public static readonly ProblemDescriptor BasesDisagree = new("DR1106", Severity.Error, "Two bases disagree");

    /// <summary>Nothing there to remove.</summary>
    public static readonly ProblemDescriptor NothingToRemove = new("DR1107", Severity.Error, "Nothing there to remove");

    /// <summary>Removed but still referred to.</summary>
    public static readonly ProblemDescriptor RemovedButReferred = new("DR1108", Severity.Error, "Removed but still referred to");

    /// <summary>Entry changes its section.</summary>
    public static readonly ProblemDescriptor EntryChangesSection = new("DR1109", Severity.Error, "Entry changes its section");

    /// <summary>'key+' or 'key-' on something not a list.</summary>
    public static readonly ProblemDescriptor NotAList = new("DR1110", Severity.Error, "'key+' or 'key-' on something not a list");

    /// <summary>Override changes nothing.</summary>
    public static readonly ProblemDescriptor OverrideChangesNothing = new("DR1111", Severity.Warning, "Override changes nothing");

    /// <summary>Chassis not declared.</summary>
    public static readonly ProblemDescriptor ChassisNotDeclared = new("DR1112", Severity.Error, "Chassis not declared");

    /// <summary>Reference missing on a chassis.</summary>
    public static readonly ProblemDescriptor MissingOnChassis = new("DR1113", Severity.Error, "Reference missing on a chassis");

    /// <summary>Two currencies in one pack.</summary>
    public static readonly ProblemDescriptor TwoCurrencies = new("DR1114", Severity.Error, "Two currencies in one pack");

    // DR20xx Keys, ids and references. Next free: DR2014.
    /// <summary>Unknown section or key.</summary>
    public static readonly ProblemDescriptor UnknownKey = new("DR2001", Severity.Error, "Unknown section or key");

    /// <summary>Required key missing.</summary>
    public static readonly ProblemDescriptor RequiredKeyMissing = new("DR2002", Severity.Error, "Required key missing");

    /// <summary>Bad id.</summary>
    public static readonly ProblemDescriptor BadId = new("DR2003", Severity.Error, "Bad id");

    /// <summary>No such id.</summary>
    public static readonly ProblemDescriptor NoSuchId = new("DR2004", Severity.Error, "No such id");

    /// <summary>Id used twice.</summary>
    public static readonly ProblemDescriptor IdUsedTwice = new("DR2005", Severity.Error, "Id used twice");

    /// <summary>Reserved word as id or grade.</summary>
    public static readonly ProblemDescriptor ReservedWord = new("DR2006", Severity.Error, "Reserved word as id or grade");

    /// <summary>Id of the wrong section.</summary>
    public static readonly ProblemDescriptor WrongSection = new("DR2007", Severity.Error, "Id of the wrong section");

    /// <summary>No such grade.</summary>
    public static readonly ProblemDescriptor NoSuchGrade = new("DR2008", Severity.Error, "No such grade");

    /// <summary>Too few, too many or equal grades.</summary>
    public static readonly ProblemDescriptor BadGrades = new("DR2009", Severity.Error, "Too few, too many or equal grades");

    /// <summary>No such '$set' or member.</summary>
    public static readonly ProblemDescriptor NoSuchSet = new("DR2010", Severity.Error, "No such '$set' or member");

    /// <summary>'$set' used where one member is needed.</summary>
    public static readonly ProblemDescriptor SetNeedsMember = new("DR2011", Severity.Error, "'$set' used where one member is needed");

    /// <summary>Declared but used nowhere.</summary>
    public static readonly ProblemDescriptor UsedNowhere = new("DR2012", Severity.Warning, "Declared but used nowhere");

    /// <summary>System used but not listed in 'systems'.</summary>
    public static readonly ProblemDescriptor SystemNotListed = new("DR2013", Severity.Warning, "System used but not listed in 'systems'");

    // DR30xx Conditions, rules, calculations. Next free: DR3015.
    /// <summary>Condition not readable.</summary>
    public static readonly ProblemDescriptor ConditionNotReadable = new("DR3001", Severity.Error, "Condition not readable");

    /// <summary>Minus sign without spaces.</summary>
    public static readonly ProblemDescriptor MinusWithoutSpaces = new("DR3002", Severity.Error, "Minus sign without spaces");

    /// <summary>'is not a or b'.</summary>
    public static readonly ProblemDescriptor IsNotOr = new("DR3003", Severity.Error, "'is not a or b'");

    /// <summary>Chain runs both ways, or holds '='.</summary>
    public static readonly ProblemDescriptor BadChain = new("DR3004", Severity.Error, "Chain runs both ways, or holds '='");

    /// <summary>'=' or '!=' on a measured quantity.</summary>
    public static readonly ProblemDescriptor EqualityOnMeasured = new("DR3005", Severity.Error, "'=' or '!=' on a measured quantity");

    /// <summary>Graded thing compared as a number, or a number tested with 'is'.</summary>
    public static readonly ProblemDescriptor GradedAsNumber = new("DR3006", Severity.Error, "Graded thing compared as a number, or a number tested with 'is'");

    /// <summary>Rules depend on each other in a circle.</summary>
    public static readonly ProblemDescriptor RulesInCircle = new("DR3007", Severity.Error, "Rules depend on each other in a circle");

    /// <summary>Rule settles an effect or a reading.</summary>
    public static readonly ProblemDescriptor SettlesWrongKind = new("DR3008", Severity.Error, "Rule settles an effect or a reading");

    /// <summary>No such calculation, or wrong arguments.</summary>
    public static readonly ProblemDescriptor BadCalculation = new("DR3009", Severity.Error, "No such calculation, or wrong arguments");

    /// <summary>Rule without consequence, or without 'when'.</summary>
    public static readonly ProblemDescriptor RuleIncomplete = new("DR3010", Severity.Error, "Rule without consequence, or without 'when'");

    /// <summary>Condition can never hold (or always holds).</summary>
    public static readonly ProblemDescriptor NeverOrAlways = new("DR3011", Severity.Warning, "Condition can never hold (or always holds)");

    /// <summary>Two 'read' conditions can hold at once.</summary>
    public static readonly ProblemDescriptor ReadsOverlap = new("DR3012", Severity.Warning, "Two 'read' conditions can hold at once");

    /// <summary>Rules settle different grades under one condition.</summary>
    public static readonly ProblemDescriptor RulesClash = new("DR3013", Severity.Warning, "Rules settle different grades under one condition");

    /// <summary>Limit finer than the reading's accuracy.</summary>
    public static readonly ProblemDescriptor LimitTooFine = new("DR3014", Severity.Warning, "Limit finer than the reading's accuracy");

    // DR31xx Numbers and units. Next free: DR3108.
    /// <summary>Number not readable.</summary>
    public static readonly ProblemDescriptor NumberNotReadable = new("DR3101", Severity.Error, "Number not readable");

    /// <summary>Units do not match.</summary>
    public static readonly ProblemDescriptor UnitsDoNotMatch = new("DR3102", Severity.Error, "Units do not match");

    /// <summary>Unit missing.</summary>
    public static readonly ProblemDescriptor UnitMissing = new("DR3103", Severity.Error, "Unit missing");

    /// <summary>Unknown unit.</summary>
    public static readonly ProblemDescriptor UnknownUnit = new("DR3104", Severity.Error, "Unknown unit");

    /// <summary>Temperature points and differences mixed.</summary>
    public static readonly ProblemDescriptor TemperaturesMixed = new("DR3105", Severity.Error, "Temperature points and differences mixed");

    /// <summary>Range or limits out of order.</summary>
    public static readonly ProblemDescriptor OutOfOrder = new("DR3106", Severity.Error, "Range or limits out of order");

    /// <summary>Magnitude looks wrong by a power of ten.</summary>
    public static readonly ProblemDescriptor MagnitudeLooksWrong = new("DR3107", Severity.Warning, "Magnitude looks wrong by a power of ten");

    // DR40xx Causes and weights. Next free: DR4019.
    /// <summary>Not a probability.</summary>
    public static readonly ProblemDescriptor NotAProbability = new("DR4001", Severity.Error, "Not a probability");

    /// <summary>First grade given a probability in 'shows' or 'background'.</summary>
    public static readonly ProblemDescriptor FirstGradeGiven = new("DR4002", Severity.Error, "First grade given a probability in 'shows' or 'background'");

    /// <summary>Grades add up to more than 1.</summary>
    public static readonly ProblemDescriptor GradesOverOne = new("DR4003", Severity.Error, "Grades add up to more than 1");

    /// <summary>Share not a plain number >= 0.</summary>
    public static readonly ProblemDescriptor BadShare = new("DR4004", Severity.Error, "Share not a plain number >= 0");

    /// <summary>Share and probability in one pack.</summary>
    public static readonly ProblemDescriptor ShareAndProbability = new("DR4005", Severity.Error, "Share and probability in one pack");

    /// <summary>Absolute certainty from an uncertain sign.</summary>
    public static readonly ProblemDescriptor AbsoluteCertainty = new("DR4006", Severity.Warning, "Absolute certainty from an uncertain sign");

    /// <summary>'shows' runs in a circle.</summary>
    public static readonly ProblemDescriptor ShowsInCircle = new("DR4007", Severity.Error, "'shows' runs in a circle");

    /// <summary>'shows' must be keyed by grade first.</summary>
    public static readonly ProblemDescriptor ShowsNeedsGrade = new("DR4008", Severity.Error, "'shows' must be keyed by grade first");

    /// <summary>'shows' names a cause or reading.</summary>
    public static readonly ProblemDescriptor ShowsWrongChild = new("DR4009", Severity.Error, "'shows' names a cause or reading");

    /// <summary>Table incomplete or overlapping.</summary>
    public static readonly ProblemDescriptor TableIncomplete = new("DR4010", Severity.Error, "Table incomplete or overlapping");

    /// <summary>Child has a table and 'shows' or 'background'.</summary>
    public static readonly ProblemDescriptor TableAndShows = new("DR4011", Severity.Error, "Child has a table and 'shows' or 'background'");

    /// <summary>Cause shows nothing.</summary>
    public static readonly ProblemDescriptor CauseShowsNothing = new("DR4012", Severity.Warning, "Cause shows nothing");

    /// <summary>Two causes cannot be told apart.</summary>
    public static readonly ProblemDescriptor CausesAlike = new("DR4013", Severity.Warning, "Two causes cannot be told apart");

    /// <summary>Finding or effect that nothing shows.</summary>
    public static readonly ProblemDescriptor ShownByNothing = new("DR4014", Severity.Warning, "Finding or effect that nothing shows");

    /// <summary>Abnormal grade has no cause and no background.</summary>
    public static readonly ProblemDescriptor GradeWithoutCause = new("DR4015", Severity.Warning, "Abnormal grade has no cause and no background");

    /// <summary>Finding nobody can observe or settle.</summary>
    public static readonly ProblemDescriptor FindingOutOfReach = new("DR4016", Severity.Warning, "Finding nobody can observe or settle");

    /// <summary>Shares out of proportion.</summary>
    public static readonly ProblemDescriptor SharesOutOfProportion = new("DR4017", Severity.Warning, "Shares out of proportion");

    /// <summary>Effect with 'question', 'read', 'bands' or 'lasting'.</summary>
    public static readonly ProblemDescriptor EffectObserved = new("DR4018", Severity.Error, "Effect with 'question', 'read', 'bands' or 'lasting'");

    // DR50xx Checks, repairs, safety. Next free: DR5014.
    /// <summary>Check gives nothing, or a derived reading.</summary>
    public static readonly ProblemDescriptor CheckGivesNothing = new("DR5001", Severity.Error, "Check gives nothing, or a derived reading");

    /// <summary>Access states need each other in a circle.</summary>
    public static readonly ProblemDescriptor AccessInCircle = new("DR5002", Severity.Error, "Access states need each other in a circle");

    /// <summary>Finding altered by one check and given by it as well.</summary>
    public static readonly ProblemDescriptor AlteredAndGiven = new("DR5003", Severity.Error, "Finding altered by one check and given by it as well");

    /// <summary>Verification decides no finding.</summary>
    public static readonly ProblemDescriptor VerificationDecidesNothing = new("DR5004", Severity.Error, "Verification decides no finding");

    /// <summary>Cause without a repair, or precondition without 'restore'.</summary>
    public static readonly ProblemDescriptor CauseWithoutRepair = new("DR5005", Severity.Warning, "Cause without a repair, or precondition without 'restore'");

    /// <summary>Repair without 'verify-by'.</summary>
    public static readonly ProblemDescriptor RepairNotVerified = new("DR5006", Severity.Warning, "Repair without 'verify-by'");

    /// <summary>Check costs no time.</summary>
    public static readonly ProblemDescriptor CheckCostsNothing = new("DR5007", Severity.Warning, "Check costs no time");

    /// <summary>Unknown signal word or sign number.</summary>
    public static readonly ProblemDescriptor UnknownSignalOrSign = new("DR5008", Severity.Error, "Unknown signal word or sign number");

    /// <summary>Hazard without 'avoid' or 'clears'.</summary>
    public static readonly ProblemDescriptor HazardIncomplete = new("DR5009", Severity.Warning, "Hazard without 'avoid' or 'clears'");

    /// <summary>Step names a danger (word list in the docs), but the entry has no hazard.</summary>
    public static readonly ProblemDescriptor DangerWithoutHazard = new("DR5010", Severity.Warning, "Step names a danger (word list in the docs), but the entry has no hazard");

    /// <summary>Intermittent cause, but its repair is verified once.</summary>
    public static readonly ProblemDescriptor IntermittentVerifiedOnce = new("DR5011", Severity.Warning, "Intermittent cause, but its repair is verified once");

    /// <summary>Check deferred until something is known that only it gives, or all checks end up deferred.</summary>
    public static readonly ProblemDescriptor DeferredForEver = new("DR5012", Severity.Error, "Check deferred until something is known that only it gives, or all checks end up deferred");

    /// <summary>Check, access or repair with a danger hazard and no access state that clears it.</summary>
    public static readonly ProblemDescriptor DangerNotCleared = new("DR5013", Severity.Warning, "Check, access or repair with a danger hazard and no access state that clears it");

    // DR60xx Recorded cases and replay. Next free: DR6012.
    /// <summary>Observation with no id, or with two.</summary>
    public static readonly ProblemDescriptor BadObservation = new("DR6001", Severity.Error, "Observation with no id, or with two");

    /// <summary>Value does not fit (grade, unit, plausibility).</summary>
    public static readonly ProblemDescriptor ValueDoesNotFit = new("DR6002", Severity.Error, "Value does not fit (grade, unit, plausibility)");

    /// <summary>Confirmed cause not in the pack.</summary>
    public static readonly ProblemDescriptor NoSuchConfirmed = new("DR6003", Severity.Error, "Confirmed cause not in the pack");

    /// <summary>Case of another pack, or case id used twice.</summary>
    public static readonly ProblemDescriptor CaseMisplaced = new("DR6004", Severity.Error, "Case of another pack, or case id used twice");

    /// <summary>Observation answers the case (it is the confirmed cause itself).</summary>
    public static readonly ProblemDescriptor ObservationAnswers = new("DR6005", Severity.Error, "Observation answers the case (it is the confirmed cause itself)");

    /// <summary>Case holds a contradiction.</summary>
    public static readonly ProblemDescriptor CaseContradicts = new("DR6006", Severity.Warning, "Case holds a contradiction");

    /// <summary>Expectation not met.</summary>
    public static readonly ProblemDescriptor ExpectationNotMet = new("DR6007", Severity.Error, "Expectation not met");

    /// <summary>Acceptance not reached.</summary>
    public static readonly ProblemDescriptor AcceptanceNotReached = new("DR6008", Severity.Error, "Acceptance not reached");

    /// <summary>Cause without a recorded case.</summary>
    public static readonly ProblemDescriptor CauseWithoutCase = new("DR6009", Severity.Warning, "Cause without a recorded case");

    /// <summary>Observation moved nothing.</summary>
    public static readonly ProblemDescriptor MovedNothing = new("DR6010", Severity.Note, "Observation moved nothing");

    /// <summary>Observations impossible for every listed cause.</summary>
    public static readonly ProblemDescriptor ImpossibleForAll = new("DR6011", Severity.Warning, "Observations impossible for every listed cause");

    // DR70xx Limits, trust, host. Next free: DR7007.
    /// <summary>Limit exceeded.</summary>
    public static readonly ProblemDescriptor LimitExceeded = new("DR7001", Severity.Error, "Limit exceeded");

    /// <summary>Path leaves the pack's folder, or a link.</summary>
    public static readonly ProblemDescriptor PathLeavesPack = new("DR7002", Severity.Error, "Path leaves the pack's folder, or a link");

    /// <summary>Calculation failed, or ran out of steps.</summary>
    public static readonly ProblemDescriptor CalculationFailed = new("DR7003", Severity.Warning, "Calculation failed, or ran out of steps");

    /// <summary>Plugin is missing or too old.</summary>
    public static readonly ProblemDescriptor PluginMissing = new("DR7004", Severity.Error, "Plugin is missing or too old");

    /// <summary>Pack changed since it was signed or pinned.</summary>
    public static readonly ProblemDescriptor PackChanged = new("DR7005", Severity.Error, "Pack changed since it was signed or pinned");

    /// <summary>Weighing was cut short by its budget.</summary>
    public static readonly ProblemDescriptor WeighingCutShort = new("DR7006", Severity.Warning, "Weighing was cut short by its budget");

    /// <summary>All descriptors, in order of code.</summary>
    public static IReadOnlyList<ProblemDescriptor> All { get; } =
    [
        NotValidYaml, TabForIndenting, DuplicateKey, AnchorAliasOrTag, KeyWithoutValue,
        TextCutOff, NotUtf8OrHiddenCharacter, MergeConflictMark, WrongKindOfValue, SeveralDocuments,
        TrueFalseOrNull, NoEntries, NoPackFile, FormatNotSupported, BaseNotFound,
        NoVersionFits, PacksInCircle, BasesDisagree, NothingToRemove, RemovedButReferred,
        EntryChangesSection, NotAList, OverrideChangesNothing, ChassisNotDeclared, MissingOnChassis,
        TwoCurrencies, UnknownKey, RequiredKeyMissing, BadId, NoSuchId,
        IdUsedTwice, ReservedWord, WrongSection, NoSuchGrade, BadGrades,
        NoSuchSet, SetNeedsMember, UsedNowhere, SystemNotListed, ConditionNotReadable,
        MinusWithoutSpaces, IsNotOr, BadChain, EqualityOnMeasured, GradedAsNumber,
        RulesInCircle, SettlesWrongKind, BadCalculation, RuleIncomplete, NeverOrAlways,
        ReadsOverlap, RulesClash, LimitTooFine, NumberNotReadable, UnitsDoNotMatch,
        UnitMissing, UnknownUnit, TemperaturesMixed, OutOfOrder, MagnitudeLooksWrong,
        NotAProbability, FirstGradeGiven, GradesOverOne, BadShare, ShareAndProbability,
        AbsoluteCertainty, ShowsInCircle, ShowsNeedsGrade, ShowsWrongChild, TableIncomplete,
        TableAndShows, CauseShowsNothing, CausesAlike, ShownByNothing, GradeWithoutCause,
        FindingOutOfReach, SharesOutOfProportion, EffectObserved, CheckGivesNothing, AccessInCircle,
        AlteredAndGiven, VerificationDecidesNothing, CauseWithoutRepair, RepairNotVerified, CheckCostsNothing,
        UnknownSignalOrSign, HazardIncomplete, DangerWithoutHazard, IntermittentVerifiedOnce, DeferredForEver,
        DangerNotCleared, BadObservation, ValueDoesNotFit, NoSuchConfirmed, CaseMisplaced,
        ObservationAnswers, CaseContradicts, ExpectationNotMet, AcceptanceNotReached, CauseWithoutCase,
        MovedNothing, ImpossibleForAll, LimitExceeded, PathLeavesPack, CalculationFailed,
        PluginMissing, PackChanged, WeighingCutShort,
    ];
}
