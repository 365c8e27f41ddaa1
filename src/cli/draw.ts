import { join } from "node:path";
import { Argument, Command, Option } from "commander";
import { type Language, READER_PAPERS, type ReadBy } from "../document/document.ts";
import { fileSlug } from "../document/file-slug.ts";
import { DRAWING_WORDS } from "../drawing/words/drawing-words.ts";
import { drawings, renderPicture, sequenceDrawings, sequencePage } from "../pipeline.ts";
import { renderSvg } from "../render/svg/render-svg.ts";
import type { UnitSystem } from "../units/format.ts";
import { EXIT } from "./exit-codes.ts";
import type { Session } from "./program.ts";
import { readDefinition, rulesOption } from "./read-well.ts";
import { openShipped } from "./shipped.ts";
import { terminal } from "./terminal.ts";
import { type NewFile, writeSet } from "./write-set.ts";

interface DrawOptions {
	readonly out: string;
	/** As the definition is written, where nothing is asked. */
	readonly units?: UnitSystem;
	readonly lang: Language;
	readonly for?: ReadBy;
	readonly png?: true;
	readonly sequence?: true;
	readonly format: "svg" | "html";
	readonly rules: readonly string[];
}

/** `casebound draw`: every drawing of the well as a standalone SVG file, and as a PNG picture where that is asked for. */
export const drawCommand = (session: Session): Command =>
	new Command("draw")
		.addArgument(new Argument("<file>", "a definition; - is standard input"))
		.option("--out <folder>", "where to write", "papers")
		.option("--png", "write a PNG picture beside each SVG, 300 dots to the inch")
		.option("--sequence", "the well being built instead, a picture a step")
		.addOption(
			new Option("--format <format>", "of the sequence: a file a step, or one page that shows them in turn")
				.choices(["svg", "html"])
				.default("svg"),
		)
		.addOption(
			new Option("--units <system>", "units of the drawings (default: as the definition is written)").choices(
				["field", "metric"],
			),
		)
		.addOption(
			new Option("--lang <language>", "language of the drawings")
				.choices(Object.keys(DRAWING_WORDS))
				.default("en"),
		)
		.addOption(
			new Option("--for <paper>", "whose readers the drawings are for: without what is kept from them")
				.choices([...READER_PAPERS])
				.default(undefined, "regulator; of the sequence landowner"),
		)
		.addOption(rulesOption())
		.addHelpText(
			"after",
			"\nExamples:\n  casebound draw my-well.yaml --out papers --units metric --png\n  casebound draw my-well.yaml --sequence --format html",
		)
		.action(async (file: string, options: DrawOptions) => {
			if (options.format === "html" && options.sequence !== true) {
				terminal.err("casebound: --format html makes one page of the sequence; add --sequence");
				session.end(EXIT.usage);
				return;
			}
			const { findings, units } = readDefinition(file, options.rules, openShipped(), session);
			if (findings === undefined) return;
			const files: NewFile[] = [];
			const asked = [options.units ?? units, options.lang, options.for] as const;
			if (options.format === "html") {
				const { name, text } = await sequencePage(findings, ...asked);
				files.push({ name: `${name}.html`, content: text });
			}
			const made =
				options.format === "html"
					? []
					: options.sequence === true
						? sequenceDrawings(findings, ...asked)
						: drawings(findings, ...asked);
			for (const { name, drawing } of made) {
				files.push({ name: `${name}.svg`, content: renderSvg(drawing) });
				if (options.png === true) files.push({ name: `${name}.png`, content: await renderPicture(drawing) });
			}
			const { identity } = findings.well;
			const revision = identity.revisions?.at(-1)?.id;
			const beside = await writeSet(options.out, {
				slug: fileSlug(identity.name),
				well: identity.name,
				...(revision === undefined ? {} : { revision }),
				definition: findings.digest,
				files,
			});
			for (const { name } of files) terminal.out(join(options.out, name));
			for (const line of beside) terminal.err(`casebound: ${line}`);
		});
