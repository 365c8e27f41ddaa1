import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { SourceText } from "../diagnostics/source-text.ts";

/** A shipped table, template or rules file that is bad; the message is the faults as they are told. */
export class SeedFault extends Error {
	/** The faults themselves, for those who read them by machine. */
	readonly faults: readonly Diagnostic[];
	readonly texts: ReadonlyMap<string, SourceText>;

	constructor(
		message: string,
		faults: readonly Diagnostic[] = [],
		texts: ReadonlyMap<string, SourceText> = new Map(),
	) {
		super(message);
		this.faults = faults;
		this.texts = texts;
	}
}
