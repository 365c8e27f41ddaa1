/** Exit codes; 64 and up follow sysexits. A batch ends with the greatest. */
export const EXIT = {
	done: 0,
	/** A fault of ours, a page that does not set cleanly included. */
	fault: 1,
	/** Under `--strict`: a check is not met or cannot be told. */
	verdicts: 2,
	usage: 64,
	badDefinition: 65,
	cannotRead: 66,
	cannotWrite: 73,
	/** A seed, template or rules file is bad. */
	badSeed: 78,
	/** Whoever read standard output closed it: 128 and SIGPIPE, as of any program in a pipe. */
	notRead: 141,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
