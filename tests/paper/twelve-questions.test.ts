import { describe, expect, it } from "vitest";
import type { Known } from "../../src/cite/known.ts";
import type { PaperDocument } from "../../src/document/document.ts";
import type { QuantityStyle } from "../../src/document/inline.ts";
import type { Findings, PaperContext } from "../../src/paper/context.ts";
import { findingsFor } from "../../src/paper/findings-for.ts";
import { nearestOffsetWell, nearestToFactor } from "../../src/paper/governing.ts";
import { notEvaluatedOf } from "../../src/paper/parts/not-evaluated.ts";
import { citationText } from "../../src/paper/words/citation.ts";
import { loadWords, type Words } from "../../src/paper/words/words.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import { printingOf, printQuantity } from "../../src/render/print/print-text.ts";
import { linesOf } from "../render/laid-places.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf, STARTERS } from "../starters.ts";

/*
 * A reader who gets pages 1 and 2 of the attachment and nothing else can answer twelve questions. Each stands here with
 * what the answer is, taken from the well and its results and not from how the page is made.
 */

interface Asked {
	readonly findings: Findings;
	readonly words: Words;
	readonly context: PaperContext;
	readonly document: PaperDocument;
	/** A value as the paper prints it. */
	readonly say: (value: Known | undefined, style?: QuantityStyle) => string;
}

interface Question {
	readonly question: string;
	readonly answer: (asked: Asked) => readonly (string | undefined)[];
}

const FACTOR = { decimals: 2 } as const;
const WHOLE = { decimals: 0 } as const;

const countOf = ({ findings }: Asked, verdict: string): number =>
	findings.judgement.findings.filter((finding) => finding.verdict === verdict).length;

const QUESTIONS: readonly Question[] = [
	{
		question: "What is the well, and where?",
		answer: ({ findings: { well } }) => [
			well.identity.name,
			well.identity.operator,
			well.identity.api_number,
			well.site.county,
			well.site.surface_location?.latitude.value.toFixed(6),
		],
	},
	{
		question: "Who answers for it?",
		answer: ({ findings: { well } }) => [
			well.identity.prepared_by?.name,
			well.identity.technical_contact?.name,
		],
	},
	{
		question: "Does the surface shoe cover the protected water, and by how much?",
		answer: ({ findings: { results }, say }) => [
			say(results.isolation.shoe_below_protected_water),
			say(results.geology.protected_water_base?.below_ground),
		],
	},
	{
		question: "What cements what, and does it reach the surface?",
		answer: ({ findings: { well, results }, words, say }) =>
			well.strings
				.filter(({ id, cement }) => id !== "conductor" && cement !== undefined)
				.flatMap(({ id }) => {
					const cement = results.cement[id];
					return cement === undefined
						? [undefined]
						: cement.to_surface
							? [words.label("review.to_surface")]
							: [`${say(cement.top.md)} MD`];
				}),
	},
	{
		question: "How far is it from the treated rock, and from the modeled fractures, to the water?",
		answer: ({ findings: { results }, say }) => [
			say(results.isolation.protected_water_to_top_perforation),
			...(results.stimulation?.fractures === undefined
				? []
				: [say(results.stimulation.fractures.least_below_protected_water)]),
		],
	},
	{
		question: "Which factor governs each string, and of which load?",
		answer: ({ findings: { well, results }, words, say }) =>
			well.strings.flatMap(({ id }) => {
				const [load] = nearestToFactor(results.casing[id]?.loads ?? [], (each) => each);
				return load === undefined
					? []
					: [
							say(load.least_factor, FACTOR),
							words.label(`load_kinds.${load.kind}`),
							words.label(`situations.${load.situation}`).toLowerCase(),
						];
			}),
	},
	{
		question: "What is the treating pressure, and what limits it?",
		answer: ({ findings: { well, results }, say }) => [
			say(well.stimulation?.limits?.maximumTreatingPressure),
			say(results.stimulation?.expected_treating_pressure, WHOLE),
			say(results.stimulation?.limiting?.allowed, { nearest: 10 }),
		],
	},
	{
		question: "Which well is nearest, and how far away?",
		answer: ({ findings: { well, results }, words, say }) => {
			const nearest = nearestOffsetWell(results);
			return nearest === undefined
				? [words.label(well.offsetWells.length > 0 ? "review.wells_not_placed" : "review.no_well_listed")]
				: [nearest.name, say(nearest.in_space)];
		},
	},
	{
		question: "What is not met?",
		answer: (asked) => [`${asked.words.label("verdicts.not met")}: ${countOf(asked, "not met")}.`],
	},
	{
		question: "What could not be told?",
		answer: (asked) => [
			`${asked.words.label("verdicts.cannot tell")}: ${countOf(asked, "cannot tell")}.`,
			`${asked.words.label("review.not_evaluated")}: ${asked.findings.results.undetermined.length}`,
			...asked.findings.results.undetermined.map(({ key }) => notEvaluatedOf(asked.context, key)?.quantity),
		],
	},
	{
		question: "What has an engineer still to confirm?",
		answer: (asked) => [
			`${asked.words.label("verdicts.needs judgement")}: ${countOf(asked, "needs judgement")}`,
			...asked.findings.judgement.findings
				.filter(({ verdict }) => verdict === "needs judgement")
				.map(({ cite }) => citationText(asked.context, cite.citation)),
		],
	},
	{
		question: "What changed, what was done otherwise than planned, and which document is this?",
		answer: ({ findings: { well, results }, document, say }) => [
			well.identity.revisions?.at(-1)?.why,
			document.imprint.revision,
			document.imprint.digest,
			...well.strings.flatMap(({ plannedShoe, shoe }) =>
				plannedShoe === undefined || plannedShoe.value === shoe.value ? [] : [say(plannedShoe), say(shoe)],
			),
			...(results.stimulation?.as_pumped === undefined
				? []
				: [say(results.stimulation.as_pumped.planned.proppant_mass)]),
		],
	},
];

const plain = (text: string): string => text.replaceAll(/[\s\u00a0\u202f]+/gu, " ").trim();

it("are twelve", () => {
	expect(QUESTIONS).toHaveLength(12);
});

describe.each(STARTERS)("pages 1 and 2 of the attachment of %s", (starter) => {
	it.each([
		["en", "field"],
		["es", "metric"],
	] as const)("answer every question, in %s and %s units", (language, units) => {
		const findings = findingsFor(findingsOf(starter), "regulator");
		const [named] = composeOnce(findingsOf(starter), [{ paper: "regulator", language, units }]).documents;
		if (named === undefined) throw new Error("no attachment");
		const document = named.paper;
		const [summary, certification] = document.sections;
		// What stands behind them is not read, and they take two pages.
		const { pages } = setPaper({
			...document,
			sections: [summary, certification].flatMap((section) => section ?? []),
		});
		expect(pages).toHaveLength(2);
		const text = plain(linesOf(pages).join(" "));
		const printing = printingOf(document);
		const say: Asked["say"] = (value, style) =>
			value === undefined
				? "?"
				: printQuantity(
						{
							kind: "quantity",
							dimension: value.dimension,
							value: value.value,
							...(style === undefined ? {} : { style }),
						},
						printing,
					);
		const words = loadWords(language);
		const context: PaperContext = { ...findings, paper: "regulator", words, units };
		const asked: Asked = { findings, words, context, document, say };
		const unanswered = QUESTIONS.flatMap(({ question, answer }) =>
			answer(asked).flatMap((part) =>
				part === undefined || !text.toLowerCase().includes(plain(part).toLowerCase())
					? [`${question} ${part ?? "(the well does not say)"}`]
					: [],
			),
		);
		expect(unanswered).toEqual([]);
	});
});
