import type { BarrierElementResults, BarrierPhaseResults, SingleFailureResults } from "../../calc/results.ts";
import { message, type Said } from "../../messages/message.ts";
import type { Case } from "../case.ts";
import type { MissingInput } from "../finding.ts";
import { listed } from "../reason.ts";
import { absent, lacking, type Measure, type Reading } from "./reading.ts";

const phasesOf = (the: Case): readonly BarrierPhaseResults[] => the.results.barriers.phases;

const byShortfall = (the: Case): readonly BarrierPhaseResults[] =>
	phasesOf(the).toSorted((a, b) => b.short.value - a.short.value);

const phaseName = ({ phase, of = "" }: BarrierPhaseResults): Said => {
	switch (phase) {
		case "drilling":
			return message("rules/barrier-phase-drilling", { of });
		case "cementing":
			return message("rules/barrier-phase-cementing", { of });
		case "treating":
			return message("rules/barrier-phase-treating");
		case "producing":
			return message("rules/barrier-phase-producing");
		default:
			return message("rules/barrier-phase-shut-in");
	}
};

const ELEMENT: Readonly<Record<BarrierElementResults["element"], Said>> = {
	"fluid column": message("rules/barrier-element-fluid-column"),
	casing: message("rules/barrier-element-casing"),
	"casing cement": message("rules/barrier-element-casing-cement"),
	wellhead: message("rules/barrier-element-wellhead"),
	preventers: message("rules/barrier-element-preventers"),
	diverter: message("rules/barrier-element-diverter"),
	floats: message("rules/barrier-element-floats"),
	plug: message("rules/barrier-element-plug"),
	packer: message("rules/barrier-element-packer"),
	tubing: message("rules/barrier-element-tubing"),
	"safety valve": message("rules/barrier-element-safety-valve"),
	"production tree": message("rules/barrier-element-production-tree"),
};

const elementName = ({ element, string }: BarrierElementResults): Said =>
	string === undefined
		? ELEMENT[element]
		: message("rules/barrier-element-of", { string, element: ELEMENT[element] });

const STATE: Readonly<Record<string, Said>> = {
	"lighter than pore pressure": message("rules/barrier-state-lighter"),
	"no cement": message("rules/barrier-state-no-cement"),
	"rated below the pressure": message("rules/barrier-state-rated"),
	"taken out": message("rules/barrier-state-taken-out"),
};

const whyShort = ({ primary, secondary }: BarrierPhaseResults): readonly Said[] => {
	const failing = [...primary, ...secondary].flatMap((element) => {
		const state = STATE[element.state];
		return state === undefined
			? []
			: [message("rules/barrier-element-fails", { element: elementName(element), state })];
	});
	return failing.length > 0 ? failing : [message("rules/no-barrier-elements")];
};

/** Elements that a phase needs and the definition does not state; each told once, where it is first needed. */
const notStated = (the: Case): readonly MissingInput[] => {
	const told = new Set<string>();
	return phasesOf(the).flatMap((phase) =>
		[...phase.primary, ...(phase.required.value > 1 ? phase.secondary : [])].flatMap((element) => {
			const key = JSON.stringify([element.element, element.string, element.at]);
			if (element.state !== "not stated" || told.has(key)) return [];
			told.add(key);
			return [
				{
					what: message("rules/missing", {
						what: message("rules/barrier-missing", {
							element: elementName(element),
							phase: phaseName(phase),
						}),
					}),
					at: element.at ?? ["well_barriers"],
				},
			];
		}),
	);
};

/** What other rules do not judge by themselves: the treated string has a rule of its own, tubing is a load case. */
const WALKED: readonly SingleFailureResults["failure"][] = ["hanger-seal", "floats", "packer"];

const worstFailure = (the: Case) =>
	the.results.barriers.failures
		.flatMap((each) => {
			const factor = each.factor_relieved ?? each.factor;
			return factor === undefined || !WALKED.includes(each.failure) ? [] : [{ each, factor }];
		})
		.toSorted((a, b) => a.factor.value - b.factor.value)[0];

const failureName = ({ failure, string }: SingleFailureResults): Said => {
	switch (failure) {
		case "hanger-seal":
			return message("rules/failure-hanger-seal", { string });
		case "floats":
			return message("rules/failure-floats", { string });
		case "packer":
			return message("rules/failure-packer", { string });
		case "tubing":
			return message("rules/failure-tubing", { string });
		default:
			return message("rules/failure-treated-string", { string });
	}
};

export const barrierMeasures = {
	"barriers short": {
		noun: message("rules/barriers-short"),
		read: (the): Reading => {
			const [worst] = byShortfall(the);
			if (worst === undefined) return absent(message("rules/no-phase-with-barriers"));
			if (worst.short.value > 0) return { state: "known", value: worst.short };
			const missing = notStated(the);
			return missing.length > 0 ? lacking(...missing) : { state: "known", value: worst.short };
		},
		say: (_, the) => {
			const short = byShortfall(the).filter(({ short: by }) => by.value > 0);
			return short.length === 0
				? [message("rules/barriers-hold")]
				: [
						{
							parts: short.flatMap((phase, i) => [
								...(i === 0 ? [] : ["; "]),
								message("rules/barriers-are-short", {
									phase: phaseName(phase),
									standing: phase.standing,
									required: phase.required,
									why: listed(whyShort(phase)),
								}),
							]),
						},
					];
		},
	},
	"factor after a single failure": {
		noun: message("rules/factor-after-failure"),
		read: (the): Reading => {
			const worst = worstFailure(the);
			return worst === undefined
				? absent(message("rules/no-failure-to-walk-through"))
				: { state: "known", value: worst.factor };
		},
		say: ({ part }, the) => {
			const worst = worstFailure(the);
			return worst === undefined
				? []
				: [message("rules/failure-leaves", { failure: failureName(worst.each), part })];
		},
	},
} as const satisfies Readonly<Record<string, Measure>>;
