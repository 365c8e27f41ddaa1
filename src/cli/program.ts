import { Command } from "commander";
import { COMMANDS, type Listed } from "./commands.ts";
import { EXIT, type ExitCode } from "./exit-codes.ts";
import { tellFault } from "./tell-fault.ts";
import { outcomeOfOutput, terminal } from "./terminal.ts";
import { VERSION } from "./version.ts";

/** What a command needs besides its own arguments. */
export interface Session {
	/** Raises the exit code; a batch ends with the greatest. */
	readonly end: (code: ExitCode) => void;
}

/** Reads the arguments, runs one command, and gives the exit code. Never throws. */
export const run = async (argv: readonly string[]): Promise<number> => {
	let exit: number = EXIT.done;
	const session: Session = { end: (code) => (exit = Math.max(exit, code)) };
	const program = new Command("casebound")
		.description(
			"Binds one YAML well definition into papers that agree: for the regulator, the landowner and the crew.",
		)
		.version(VERSION)
		.configureHelp({ ...HELP, subcommandTerm: (command) => `${command.name()} ${command.usage()}` })
		.exitOverride()
		.configureOutput(OUTPUT)
		.showHelpAfterError("Run casebound --help for the commands.");
	try {
		const asked = argv[2] === "complete" && argv[3] === "--";
		const named = asked ? argv[4] : namedIn(argv);
		for (const listed of COMMANDS)
			program.addCommand(inherit(listed.name === named ? await whole(listed, session) : headOf(listed)));
		if (asked) (await import("./completion.ts")).complete(program, argv.slice(4));
		else await program.parseAsync(argv);
	} catch (fault) {
		exit = Math.max(exit, await tellFault(fault));
	}
	return Math.max(exit, await outcomeOfOutput());
};

/** The command that the arguments name, which alone is loaded; `help bind` names `bind`. */
const namedIn = (argv: readonly string[]): string | undefined => {
	const [first, second] = argv.slice(2);
	return first === "help" ? second : first;
};

const whole = async ({ load, about }: Listed, session: Session): Promise<Command> =>
	(await load(session)).description(about);

/** What the list of commands tells of one that is not run. */
const headOf = ({ name, takes, about }: Listed): Command => new Command(name).description(about).usage(takes);

/** Help is wrapped on narrow terminals too, down to a column of so many letters. */
const HELP = { minWidthToWrap: 20 };

const OUTPUT = {
	writeOut: (text: string) => terminal.tell(text.trimEnd()),
	writeErr: (text: string) => terminal.err(text.trimEnd()),
	/** A wrong use is told in two lines: what is wrong, with what may have been meant; and where to look. */
	outputError: (text: string, write: (text: string) => void) => write(text.replace("\n(Did", " (Did")),
};

const inherit = (command: Command): Command =>
	command
		.exitOverride()
		.configureHelp(HELP)
		.configureOutput(OUTPUT)
		.showHelpAfterError(`Run casebound ${command.name()} --help for what it takes.`);
