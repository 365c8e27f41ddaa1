import type { ChangedVerdict } from "../compare/changed-verdicts.ts";
import type { Changes } from "../compare/compare.ts";
import type { MovedResult } from "../compare/moved-results.ts";
import { type ToldInput, toldCauses, toldChange, toldInput, toldValue } from "../compare/tell.ts";
import { wrap } from "../diagnostics/wrap.ts";
import type { Fact } from "../messages/message.ts";
import { message } from "../messages/message.ts";
import { capital, factText, type Reader, tell, tellPhrase, tellSaid } from "../messages/print.ts";
import { PRINT_WORDS } from "../render/print/print-words.ts";
import { say } from "../rules/reason.ts";

/** How one of the two states is named to the reader. */
export interface StateName {
	readonly file: string;
	readonly well: string;
	readonly revision?: string;
	readonly digest: string;
}

interface ChangesTextOptions {
	readonly width: number;
	readonly reader: Reader;
	/** Every result, not those alone that the regulator's paper prints. */
	readonly all?: boolean;
	/** Whether the regulator's paper prints a value, by its key. */
	readonly printed: (key: string) => boolean;
}

/** What changed, for the terminal: inputs, findings worst first, then results by the inputs that they rest on. */
export const changesText = (
	changes: Changes,
	names: { readonly before: StateName; readonly after: StateName },
	options: ChangesTextOptions,
): string => {
	const { reader } = options;
	const head = [
		names.after.well,
		`  ${tellPhrase(message("compare/earlier"), reader)}: ${stateText(names.before, reader)}`,
		`  ${tellPhrase(message("compare/later"), reader)}: ${stateText(names.after, reader)}`,
		...(names.before.well === names.after.well
			? []
			: [
					tell(message("compare/other-well", { before: names.before.well, after: names.after.well }), reader),
				]),
	];
	const lists = [
		...inputsText(changes, options),
		...verdictsText(changes, options),
		...gapsText(changes, options),
		...daysText(changes, options),
		...resultsText(changes, options),
	];
	return [...head, ...(lists.length === 0 ? ["", tell(message("compare/nothing"), reader)] : lists)].join(
		"\n",
	);
};

const stateText = ({ file, revision, digest }: StateName, reader: Reader): string =>
	tellPhrase(message("compare/state", { file, revision: revision ?? "–", digest }), reader);

const headed = (
	code: "compare/inputs" | "compare/verdicts" | "compare/margins" | "compare/gaps" | "compare/days",
	count: number,
	lines: readonly string[],
	{ reader }: ChangesTextOptions,
): readonly string[] =>
	count === 0 ? [] : ["", tell(message(code, { count }), reader).toUpperCase(), ...lines];

const indented = (text: string, { width }: ChangesTextOptions): readonly string[] =>
	wrap(text, width - 4).map((line, i) => (i === 0 ? `  ${line}` : `    ${line}`));

const inputsText = (changes: Changes, options: ChangesTextOptions): readonly string[] =>
	headed(
		"compare/inputs",
		changes.inputs.length,
		changes.inputs.flatMap((input, i) =>
			indented(`${i + 1}. ${inputText(toldInput(input, changes, options.reader), options.reader)}`, options),
		),
		options,
	);

/** `casing › surface › pipe › 1 › to (Bottom of the section): 1185 ft → 1285 ft`. */
const inputText = ({ name, title, was, is, note }: ToldInput, { language }: Reader): string => {
	const what = title === undefined || language !== "en" ? "" : ` (${title})`;
	const both = was !== undefined && is !== undefined;
	const amounts = both ? `: ${was} → ${is}` : "";
	const one = both ? "" : (was ?? is ?? "");
	return `${name}${what}${amounts}${note === undefined ? "" : `${both ? " · " : ": "}${note}`}${one === "" ? "" : `: ${one}`}`;
};

const verdictsText = ({ verdicts }: Changes, options: ChangesTextOptions): readonly string[] => {
	const turned = verdicts.filter(({ turn }) => turn !== "margin");
	const moved = verdicts.filter(({ turn }) => turn === "margin");
	return [
		...headed(
			"compare/verdicts",
			turned.length,
			turned.flatMap((each) => turnedText(each, options)),
			options,
		),
		...headed(
			"compare/margins",
			moved.length,
			moved.flatMap((each) => marginText(each, options)),
			options,
		),
	];
};

const turnedText = ({ before, after }: ChangedVerdict, options: ChangesTextOptions): readonly string[] => {
	const { reader } = options;
	const words = PRINT_WORDS[reader.language].verdicts;
	const of = after ?? before;
	if (of === undefined) return [];
	const was = before === undefined ? message("compare/new-finding") : undefined;
	const is = after === undefined ? message("compare/no-longer") : undefined;
	const turn = [
		was === undefined ? capital(words[before?.verdict ?? "met"]) : tell(was, reader),
		is === undefined ? words[after?.verdict ?? "met"].toUpperCase() : tellPhrase(is, reader),
	].join(" → ");
	return indented(
		`${turn}: ${tellSaid(of.cite.citation, reader)}, ${tellSaid(of.subject, reader)}: ${say(of.reason, reader)} [${of.cite.rule}]`,
		options,
	);
};

const marginText = ({ before, after }: ChangedVerdict, options: ChangesTextOptions): readonly string[] => {
	const { reader } = options;
	if (before?.margin === undefined || after?.margin === undefined) return [];
	const both = `${told(before.margin, after.margin, reader)} → ${told(after.margin, before.margin, reader)}`;
	return indented(
		`${tellSaid(after.cite.citation, reader)}, ${tellSaid(after.subject, reader)}: ${both} [${after.cite.rule}]`,
		options,
	);
};

type Margin = NonNullable<NonNullable<ChangedVerdict["after"]>["margin"]>;

/** With as many decimals as tell it from the other. */
const told = (margin: Margin, from: Margin, reader: Reader): string =>
	factText({ told: margin, from } satisfies Fact, reader);

const gapsText = ({ gaps }: Changes, options: ChangesTextOptions): readonly string[] =>
	headed(
		"compare/gaps",
		gaps.length,
		gaps.flatMap(({ kind, what }) =>
			indented(
				tell(
					message(kind === "added" ? "compare/now-missing" : "compare/now-given", { what }),
					options.reader,
				),
				options,
			),
		),
		options,
	);

const daysText = ({ days }: Changes, options: ChangesTextOptions): readonly string[] =>
	headed(
		"compare/days",
		days.length,
		days.flatMap(({ before, after }) =>
			indented(
				`${before?.due ?? "–"} → ${after?.due ?? "–"}: ${tellSaid((after ?? before)?.citation ?? "", options.reader)}: ${tellSaid((after ?? before)?.requirement ?? "", options.reader)}`,
				options,
			),
		),
		options,
	);

const resultsText = ({ results }: Changes, options: ChangesTextOptions): readonly string[] => {
	const { reader, all, printed } = options;
	const { moved, compared, smaller } = results;
	if (moved.length + smaller === 0) return [];
	const shown = moved.filter(({ key }) => all === true || printed(key));
	const rest = moved.length - shown.length;
	const title = tell(message("compare/results", { moved: moved.length, compared }), reader);
	return [
		"",
		title.toUpperCase(),
		...shown.flatMap((each) => indented(resultText(each, options), options)),
		...(rest === 0 ? [] : [`  ${tell(message("compare/further", { count: rest }), reader)}`]),
		...(smaller === 0 ? [] : [`  ${tell(message("compare/smaller", { count: smaller }), reader)}`]),
	];
};

const resultText = (moved: MovedResult, { reader }: ChangesTextOptions): string => {
	const key = moved.key.replace(/^results\./u, "");
	const change = toldChange(moved, reader.units);
	const causes = toldCauses(moved, reader);
	const rows = moved.rows.map((row) => tellPhrase(message("compare/row", { row }), reader));
	const from = [
		...(causes === undefined ? [] : [causes]),
		...(moved.byChoice === true ? rows.slice(0, 1) : []),
	];
	return [
		`${key}: ${toldValue(moved.before, reader)} → ${toldValue(moved.after, reader)}`,
		...(change === "" ? [] : [` (${change})`]),
		...(from.length === 0 ? [] : [`, ${from.join("; ")}`]),
	].join("");
};
