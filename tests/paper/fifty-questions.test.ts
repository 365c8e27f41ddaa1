import { describe, expect, it } from "vitest";
import type { Block, Cell } from "../../src/document/blocks.ts";
import type { PaperDocument } from "../../src/document/document.ts";
import type { Inline } from "../../src/document/inline.ts";
import { composeOnce } from "../run/compose-once.ts";
import { findingsOf, STARTERS, type Starter } from "../starters.ts";

/*
 * What people ask where a well is planned near them: common practice, no source. Each is answered from this well or
 * stands on the list of what nobody can answer yet; none is passed over in silence.
 */
const FIFTY = [
	"How far below my water well is the work?",
	"How deep is our drinking water?",
	"How many layers of steel and cement are between it and the oil or gas?",
	"How deep is the surface pipe, and how far below the water?",
	"How do you know the cement worked?",
	"What if cement does not come back to the top?",
	"What if the pipe leaks or rusts?",
	"Can you test my water? Who pays, and when?",
	"Do you test the flow too?",
	"Who pays if my water is harmed?",
	"Can drilling sideways hurt my well?",
	"What mud do you use while drilling through our water?",
	"Will the well go under my land, and how deep there?",
	"How long is the sideways part, and which way?",
	"How tall, long and wide do the cracks grow?",
	"Could cracks reach old wells or faults?",
	"How do you know the old wells nearby are plugged?",
	"How close is it to houses, the school, the stream?",
	"What do you pump?",
	"How much water?",
	"Where does the water come from?",
	"Where does it go afterwards? Are the tanks covered?",
	"Is what comes up radioactive, and who checks?",
	"How much sand, and how do you keep the dust down?",
	"What is the highest pressure, and what stops it going higher?",
	"How many trucks, on which road, at what hours?",
	"Who pays for the road?",
	"How long will it last?",
	"Day and night? Lights?",
	"How loud is it at my house?",
	"Will I feel shaking?",
	"Whom do I call, day and night?",
	"What happens in an emergency? How far would we have to go?",
	"Is there poisonous gas?",
	"What if there is a spill?",
	"Can the firefighters cope?",
	"What are the walls for? Would they stop a blast?",
	"What air tests are done, and may we see them?",
	"Will there be a flare? Does methane leak?",
	"Has this ever gone wrong?",
	"Who checks you?",
	"Who are the workers? Are they screened?",
	"How many wells, now and later?",
	"How big is the site, and what stays when you leave?",
	"Will you come back and do it again?",
	"How long will the well produce?",
	"What happens at the end? Who pays for plugging?",
	"Do pipelines run under my field?",
	"How do I comment, and by when?",
	"Is this plan final? What changed?",
] as const;

const textOf = (inlines: readonly Inline[]): string =>
	inlines
		.map((inline) =>
			inline.kind === "text"
				? inline.text
				: "children" in inline
					? textOf(inline.children)
					: inline.kind === "quantity"
						? "#"
						: "",
		)
		.join("");

const said = (cell: Cell | undefined): string =>
	cell?.kind === "rich" ? textOf(cell.children) : cell?.kind === "text" ? cell.text : "";

const rowsOf = ({ sections }: PaperDocument, id: string) =>
	sections
		.filter((section) => section.id === id)
		.flatMap(({ blocks }) => blocks)
		.flatMap((block: Block) => (block.kind === "table" ? block.rows : []))
		.filter(({ emphasis }) => emphasis !== "group")
		.map(({ cells }) => ({
			number: said(cells["number"]),
			question: said(cells["question"]),
			answer: said(cells["answer"]).trim(),
		}));

const answersOf = (starter: Starter, language: "en" | "es"): PaperDocument => {
	const [made] = composeOnce(findingsOf(starter), [{ paper: "answers", language, units: "field" }]).documents;
	if (made === undefined) throw new Error("no answers");
	return made.paper;
};

it("are fifty, each once", () => {
	expect(new Set(FIFTY).size).toBe(50);
});

describe.each(STARTERS)("what neighbors of %s ask", (starter) => {
	it.each(FIFTY)("%s", (question) => {
		const document = answersOf(starter, "en");
		const answered = rowsOf(document, "answers").filter((row) => row.question === question);
		const open = rowsOf(document, "open").filter((row) => row.question === question);
		expect(answered.length + open.length).toBe(1);
		for (const { answer } of answered) expect(answer.length).toBeGreaterThan(1);
	});

	it("is asked, answered and open in Spanish as in English", () => {
		const numbersOf = (language: "en" | "es", id: string) =>
			rowsOf(answersOf(starter, language), id).map(({ number }) => number);
		for (const id of ["answers", "open"]) expect(numbersOf("es", id)).toEqual(numbersOf("en", id));
		for (const { answer } of rowsOf(answersOf(starter, "es"), "answers"))
			expect(answer.length).toBeGreaterThan(1);
	});
});
