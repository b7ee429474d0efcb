// Loaded beside the command line: says on standard error, at the end, how much memory the process held at most, in KB.
process.once('exit', () => process.stderr.write(`peak ${process.resourceUsage().maxRSS}\n`));
