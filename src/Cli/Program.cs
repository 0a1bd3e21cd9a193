using Dryfit.Cli;

return DryfitCommand.Run(args, Surroundings.OfThisProcess());
