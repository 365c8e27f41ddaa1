import { CommanderError } from "commander";
import { wrap } from "../diagnostics/wrap.ts";
import { EXIT, type ExitCode } from "./exit-codes.ts";
import { FileFault } from "./file-fault.ts";
import { SeedFault } from "./seed-fault.ts";
import { terminal } from "./terminal.ts";

/** Says what went wrong, and gives the exit code for it. */
export const tellFault = async (fault: unknown): Promise<ExitCode> => {
	if (fault instanceof CommanderError) return fault.exitCode === 0 ? EXIT.done : EXIT.usage;
	if (fault instanceof FileFault) {
		const text = `casebound: ${fault.message}`;
		terminal.err(terminal.watched ? wrap(text, terminal.width).join("\n") : text);
		return fault.exit;
	}
	if (fault instanceof SeedFault) {
		terminal.err(fault.message);
		return EXIT.badSeed;
	}
	terminal.err(
		"casebound: internal/fault: this is a defect of the tool, not of your definition. Please report it with the definition that showed it.",
	);
	const stack = fault instanceof Error ? (fault.stack ?? fault.message) : String(fault);
	const { readableStack } = await import("./readable-stack.ts");
	terminal.err(readableStack(stack));
	return EXIT.fault;
};
