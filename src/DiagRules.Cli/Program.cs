using DiagRules.Cli;

return Tool.Run(args, Terminal.OfProcess());
