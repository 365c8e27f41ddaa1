import type * as z from "zod";
import { diagnose } from "../diagnostics/diagnose.ts";
import type { Checked, Diagnostic } from "../diagnostics/diagnostic.ts";
import { message, type Said } from "../messages/message.ts";
import { readYaml } from "../source/read-yaml.ts";
import { bibliography, bibliographySchema } from "./bibliography.ts";
import { casingRows, casingSchema } from "./casing-table.ts";
import { type Catalog, catalogOf } from "./catalog.ts";
import {
	cementAdditiveRows,
	cementAdditiveSchema,
	cementClassRows,
	cementClassSchema,
} from "./cement-table.ts";
import { bowSpringRows, centralizerSchema } from "./centralizer-table.ts";
import { checkSeed, repeatedNames } from "./check-seed.ts";
import { errorModel, errorModelSchema } from "./error-model-table.ts";
import { glossarySchema, glossaryTerms } from "./glossary.ts";
import { gradeKey, gradeRows, gradeSchema } from "./grade-table.ts";
import { commonSchema, JOB_IDS, jobSchema, withCommon } from "./jobs.ts";
import { plausibilitySchema } from "./plausibility.ts";
import { type ReadSeed, readShippedSeed } from "./seed-file.ts";
import { sourService, sourServiceSchema } from "./sour-service-table.ts";
import { stateRows, stateSchema } from "./state-table.ts";
import { threadRows, threadSchema } from "./thread-table.ts";

/*
 * takes  the tables under seeds/
 * gives  a catalogue whose every figure knows its row, column and source
 * may not know a well, or fill a gap in one
 */

const read = <S extends z.ZodType>(
	readSeed: ReadSeed,
	name: string,
	schema: S,
	faults: Diagnostic[],
): z.output<S> | undefined => {
	const file = `seeds/${name}`;
	const unreadable = (what: Said, range?: readonly [number, number]): undefined => {
		faults.push(
			diagnose(
				"seed/unreadable",
				{ file, path: [], ...(range === undefined ? {} : { range }) },
				{
					what,
					expected: message("seed/unreadable.expected"),
					mend: message("seed/unreadable.mend"),
				},
			),
		);
	};
	const text = readSeed(name);
	if (text === undefined) return unreadable(message("seed/unreadable.missing"));
	const yaml = readYaml(text, file);
	const [broken] = yaml.diagnostics;
	if (yaml.value === undefined || broken !== undefined)
		return unreadable(
			message("seed/unreadable.what", { why: broken?.what ?? message("seed/unreadable.nothing") }),
			broken?.at.range,
		);
	const checked = checkSeed(schema, yaml.value.value, name);
	faults.push(...checked.diagnostics);
	return checked.value;
};

/**
 * Reads and checks every shipped table. A bad one gives diagnostics at its place and no catalogue; nothing is thrown.
 *
 * @param readSeed gives the text of a file under `seeds/`; by default the files that ship with the tool
 */
export const loadCatalog = (readSeed: ReadSeed = readShippedSeed): Checked<Catalog> => {
	const diagnostics: Diagnostic[] = [];
	const table = <S extends z.ZodType>(name: string, schema: S) => read(readSeed, name, schema, diagnostics);
	const casing = table("pipe/casing.yaml", casingSchema);
	const grades = table("pipe/grades.yaml", gradeSchema);
	const threads = table("pipe/threads.yaml", threadSchema);
	const sour = table("pipe/sour-service.yaml", sourServiceSchema);
	const classes = table("cement/classes.yaml", cementClassSchema);
	const additives = table("cement/additives.yaml", cementAdditiveSchema);
	const centralizers = table("cement/centralizers.yaml", centralizerSchema);
	const mwd = table("survey/mwd.yaml", errorModelSchema);
	const sources = table("sources.yaml", bibliographySchema);
	const plausibility = table("plausibility.yaml", plausibilitySchema);
	const states = table("states.yaml", stateSchema);
	const glossary = table("glossary.yaml", glossarySchema);
	const common = table("jobs/common.yaml", commonSchema);
	const jobs = withCommon(
		JOB_IDS.flatMap((id) => table(`jobs/${id}.yaml`, jobSchema) ?? []),
		common ?? { id: "common" },
	);
	const repeated = (name: string, list: string, names: readonly string[] | undefined): void => {
		diagnostics.push(
			...repeatedNames(
				name,
				(names ?? []).map((each, i) => ({ name: each, path: [list, i] })),
			),
		);
	};
	repeated(
		"pipe/casing.yaml",
		"sizes",
		casing?.sizes.map(({ size }) => size),
	);
	repeated(
		"pipe/threads.yaml",
		"sizes",
		threads?.sizes.map(({ size }) => size),
	);
	repeated(
		"pipe/grades.yaml",
		"grades",
		grades?.grades.map(({ grade }) => gradeKey(grade)),
	);
	repeated(
		"pipe/sour-service.yaml",
		"grades",
		sour?.grades.map(({ grade }) => gradeKey(grade)),
	);
	repeated(
		"cement/classes.yaml",
		"classes",
		classes?.classes.map((row) => row.class),
	);
	repeated(
		"cement/additives.yaml",
		"additives",
		additives?.additives.map(({ additive }) => additive),
	);
	repeated(
		"cement/centralizers.yaml",
		"bow_springs",
		centralizers?.bow_springs.map(({ size }) => String(size)),
	);
	repeated(
		"plausibility.yaml",
		"bands",
		plausibility?.bands.map(({ at }) => at.join(".")),
	);
	if (
		diagnostics.length > 0 ||
		casing === undefined ||
		grades === undefined ||
		threads === undefined ||
		sour === undefined ||
		classes === undefined ||
		additives === undefined ||
		centralizers === undefined ||
		mwd === undefined ||
		sources === undefined ||
		plausibility === undefined ||
		states === undefined ||
		glossary === undefined
	)
		return { diagnostics };
	return {
		diagnostics,
		value: catalogOf({
			casing: casingRows(casing),
			grades: gradeRows(grades),
			threads: threadRows(threads),
			sourService: sourService(sour),
			cementClasses: cementClassRows(classes),
			cementAdditives: cementAdditiveRows(additives),
			bowSprings: bowSpringRows(centralizers),
			errorModels: [errorModel(mwd)],
			sources: bibliography(sources),
			plausibility: plausibility.bands,
			states: stateRows(states),
			glossary: glossaryTerms(glossary),
			jobs,
			commonItems: common ?? { id: "common" },
		}),
	};
};
