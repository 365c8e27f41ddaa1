/** Exit codes; 64 and up follow sysexits. A batch ends with the greatest. */
export const EXIT = {
	/** Done. */
	done: 0,
	/** A fault of the tool, a page that does not set cleanly included. */
	fault: 1,
	/** Under `--strict`: a finding is not met or lacks data. */
	verdicts: 2,
	/** The command line is not one that the tool understands. */
	usage: 64,
	/** The definition has errors; nothing is written. */
	badDefinition: 65,
	/** A file cannot be read. */
	cannotRead: 66,
	/** A file cannot be written. */
	cannotWrite: 73,
	/** A seed, template or rules file is bad. */
	badSeed: 78,
	/** Whoever read standard output closed it: 128 and SIGPIPE, as of any program in a pipe. */
	notRead: 141,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
