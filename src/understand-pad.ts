import { amongPad, type PadWell, padWell } from "./calc/site/index.ts";
import { type Pad, readPad } from "./definition/pad.ts";
import { diagnose } from "./diagnostics/diagnose.ts";
import { type Diagnostic, hasErrors } from "./diagnostics/diagnostic.ts";
import type { SourceText } from "./diagnostics/source-text.ts";
import { message } from "./messages/message.ts";
import { decodeText } from "./source/decode-text.ts";
import { readYaml } from "./source/read-yaml.ts";
import {
	conclude,
	type NamedFile,
	type Resolved,
	resolveDefinition,
	type Shared,
	type Surroundings,
	type Understanding,
} from "./understand.ts";
import type { UnitSystem } from "./units/format.ts";
import type { ReadFile } from "./well/read-file.ts";

/*
 *  The wells of one pad: each definition is laid over what the pad file says, resolved by itself, told of the others, and
 *  then calculated and judged like any other.
 */

/** What the wells of a pad are read against: their files, and what lies beside each. */
interface PadSurroundings extends Omit<Surroundings, "readFile"> {
	/** Gives a file that the pad file names. */
	readonly readFile: ReadFile;
	/** Gives the files beside a well's own definition, by the name of that. */
	readonly beside: (file: string) => ReadFile;
}

/** A well of a pad as it was understood. */
interface UnderstoodWell {
	readonly file: string;
	readonly understanding: Understanding;
}

/** What came of a pad. No well has findings where any of them has an error: each is judged beside the others. */
export interface UnderstoodPad {
	readonly name?: string;
	/** Faults of the pad file and of every well, each once, in the file that it stands in. */
	readonly diagnostics: readonly Diagnostic[];
	readonly texts: ReadonlyMap<string, SourceText>;
	readonly units: UnitSystem;
	readonly wells: readonly UnderstoodWell[];
}

/** Reads a pad file and every well that it names. */
export const understandPad = (file: NamedFile, surroundings: PadSurroundings): UnderstoodPad => {
	const { value, diagnostics, texts } = readPadFile(file);
	if (value === undefined) return { diagnostics, texts, units: "field", wells: [] };
	const { pad, shared } = value;
	const found = pad.wells.map((name, i) => wellFile(name, i, file.name, surroundings.readFile));
	const files = found.flatMap((each) => ("code" in each ? [] : [each]));
	const missing = found.flatMap((each) => ("code" in each ? [each] : []));
	const resolved = files.map((well) => ({
		file: well,
		resolved: resolveDefinition(
			well,
			{ ...surroundings, readFile: besideEither(well, surroundings) },
			shared,
		),
	}));
	const before = [...diagnostics, ...missing, ...sameNames(resolved)];
	// A well is judged beside the others, so that an error in one of them leaves none to be judged.
	const stopped = hasErrors([...before, ...resolved.flatMap((each) => each.resolved.diagnostics)]);
	const wells = (stopped ? resolved : meeting(resolved, files)).map(({ file: { name }, resolved: each }) => ({
		file: name,
		understanding: stopped ? each : conclude(each, surroundings),
	}));
	const all = distinct([...before, ...wells.flatMap(({ understanding }) => understanding.diagnostics)]);
	for (const { understanding } of wells)
		for (const [name, text] of understanding.texts) if (!texts.has(name)) texts.set(name, text);
	const faulty = hasErrors(all);
	return {
		name: pad.name,
		diagnostics: all,
		texts,
		units: wells[0]?.understanding.units ?? "field",
		wells: faulty
			? wells.map(({ file: name, understanding: { diagnostics: own, texts: read, units } }) => ({
					file: name,
					understanding: { diagnostics: own, texts: read, units },
				}))
			: wells,
	};
};

const readPadFile = (file: NamedFile) => {
	const texts = new Map<string, SourceText>();
	const diagnostics: Diagnostic[] = [];
	const decoded = decodeText(file.bytes, file.name);
	diagnostics.push(...decoded.diagnostics);
	texts.set(file.name, { text: decoded.value ?? new TextDecoder().decode(file.bytes) });
	const tree = decoded.value === undefined ? undefined : readYaml(decoded.value, file.name);
	if (tree !== undefined) diagnostics.push(...tree.diagnostics);
	if (tree?.value === undefined) return { diagnostics, texts };
	const text = { text: tree.value.text, positions: tree.value.positions };
	texts.set(file.name, text);
	const pad = readPad(tree.value.value);
	const inFile = (each: Diagnostic): Diagnostic => ({
		...each,
		at: { ...each.at, file: file.name },
		...(each.related === undefined
			? {}
			: { related: each.related.map(({ at, label }) => ({ at: { ...at, file: file.name }, label })) }),
	});
	diagnostics.push(...pad.diagnostics.map(inFile));
	if (pad.value === undefined) return { diagnostics, texts };
	const shared: Shared = { file, text, value: pad.value.shared };
	return { value: { pad: pad.value satisfies Pad, shared }, diagnostics, texts };
};

const wellFile = (name: string, index: number, pad: string, readFile: ReadFile): NamedFile | Diagnostic => {
	const found = readFile(name);
	if ("bytes" in found) return { name: found.file, bytes: found.bytes };
	return diagnose(
		found.code,
		{ file: pad, path: ["wells", index] },
		{
			what: message("file/refused", { why: found.refused }),
			expected: message("pad/well-file.expected"),
			found: name,
			mend: message("pad/well-file.mend"),
		},
	);
};

/** What the pad file names lies beside it; what a well names lies beside the well, and comes first. */
const besideEither = (
	{ name }: NamedFile,
	{ readFile, beside }: Pick<PadSurroundings, "readFile" | "beside">,
): ReadFile => {
	const own = beside(name);
	return (asked) => {
		const found = own(asked);
		return "bytes" in found || found.code !== "file/not-found" ? found : readFile(asked);
	};
};

interface Member {
	readonly file: NamedFile;
	readonly resolved: Resolved;
}

/** Papers and files are named by the well: two of one name could not be told apart. */
const sameNames = (members: readonly Member[]): readonly Diagnostic[] =>
	members.flatMap(({ file, resolved }, i) => {
		const name = resolved.ready?.well.identity.name;
		const first = members.findIndex((each) => each.resolved.ready?.well.identity.name === name);
		const other = members[first];
		if (name === undefined || first === i || other === undefined) return [];
		return [
			diagnose(
				"definition/duplicate-id",
				{ file: file.name, path: ["well", "name"] },
				{
					what: message("pad/one-name.what"),
					expected: message("pad/one-name.expected"),
					found: name,
					mend: message("pad/one-name.mend"),
					related: [
						{
							at: { file: other.file.name, path: ["well", "name"] },
							label: message("definition/same-name.label"),
						},
					],
				},
			),
		];
	});

/** Each well among the others; the fingerprint of its papers is made over their files as well. */
const meeting = (members: readonly Member[], files: readonly NamedFile[]): readonly Member[] => {
	const paths = new Map(
		members.flatMap(({ file, resolved }): [NamedFile, PadWell][] => {
			const found = resolved.ready && padWell(file.name, resolved.ready.well);
			return found === undefined ? [] : [[file, found]];
		}),
	);
	return members.map(({ file, resolved }) => {
		const { ready } = resolved;
		if (ready === undefined) return { file, resolved };
		const others = files.filter((other) => other !== file);
		const well = amongPad(
			ready.well,
			others.flatMap((other) => paths.get(other) ?? []),
		);
		return { file, resolved: { ...resolved, ready: { ...ready, well, read: [...ready.read, ...others] } } };
	});
};

/** A fault of what wells share would be told of each. */
const distinct = (diagnostics: readonly Diagnostic[]): readonly Diagnostic[] => {
	const seen = new Set<string>();
	return diagnostics.filter(({ code, at, what, found }) => {
		const key = JSON.stringify([code, at, what, found]);
		return !seen.has(key) && seen.add(key);
	});
};
