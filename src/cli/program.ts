import { Command, CommanderError } from "commander";
import { bindCommand } from "./bind.ts";
import { checkCommand } from "./check.ts";
import { drawCommand } from "./draw.ts";
import { EXIT, type ExitCode } from "./exit-codes.ts";
import { explainCommand } from "./explain.ts";
import { FileFault } from "./files.ts";
import { listCommand } from "./list.ts";
import { newCommand } from "./new.ts";
import { resultsCommand } from "./results.ts";
import { schemaCommand } from "./schema.ts";
import { SeedFault } from "./shipped.ts";
import { terminal } from "./terminal.ts";
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
		.exitOverride()
		.configureOutput({ writeErr: (text) => terminal.err(text.trimEnd()) })
		.showHelpAfterError("Run casebound --help for the commands, or casebound <command> --help for one.");
	for (const command of [
		newCommand,
		checkCommand,
		bindCommand,
		resultsCommand,
		drawCommand,
		explainCommand,
		listCommand,
		schemaCommand,
	])
		program.addCommand(inherit(command(session)));
	try {
		await program.parseAsync(argv);
	} catch (fault) {
		exit = Math.max(exit, told(fault));
	}
	return exit;
};

const inherit = (command: Command): Command =>
	command
		.exitOverride()
		.configureOutput({ writeErr: (text) => terminal.err(text.trimEnd()) })
		.showHelpAfterError();

/** Says what went wrong, and gives the exit code for it. */
const told = (fault: unknown): ExitCode => {
	if (fault instanceof CommanderError) return fault.exitCode === 0 ? EXIT.done : EXIT.usage;
	if (fault instanceof FileFault) {
		terminal.err(`casebound: ${fault.message}`);
		return fault.exit;
	}
	if (fault instanceof SeedFault) {
		terminal.err(fault.message);
		return EXIT.badSeed;
	}
	terminal.err(
		"casebound: internal/fault: this is a defect of the tool, not of your definition. Please report it with the definition that showed it.",
	);
	terminal.err(fault instanceof Error ? (fault.stack ?? fault.message) : String(fault));
	return EXIT.fault;
};
