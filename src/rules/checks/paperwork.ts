import type { LimitLeaf } from "../../catalog/limits/limit.ts";
import { message } from "../../messages/message.ts";
import { type Case, missingAt } from "../case.ts";
import { judgeDeadline } from "../deadline.ts";
import { FIELD_CODE, FIELD_WORDS } from "../fields.ts";
import { cannotTell, doesNotApply, met, needsJudgement, type Outcome } from "../outcome.ts";
import { listed } from "../reason.ts";
import type { Check } from "./check.ts";

/** Fields that a filing has to carry. Those of a part the well does not have are not asked. */
const filing = ({ well }: Case, { fields }: Extract<LimitLeaf, { form: "present" }>): Outcome => {
	const read = fields.map((name) => ({ name, at: FIELD_CODE[name].at, given: FIELD_CODE[name].given(well) }));
	const asked = read.filter(({ given }) => given !== undefined);
	if (asked.length === 0) return doesNotApply(message("rules/well-has-no-part-that-these-fields"));
	const missing = asked.filter(({ given }) => given === false);
	if (missing.length > 0)
		return cannotTell(missing.map(({ name, at }) => missingAt(FIELD_WORDS[name], ...at)));
	return met(
		message("rules/definition-carries", {
			asked: listed(asked.map(({ name }) => message("rules/missing", { what: FIELD_WORDS[name] }))),
		}),
	);
};

const byHand = (_: Case, { question }: Extract<LimitLeaf, { form: "judgement" }>): Outcome =>
	needsJudgement({ declared: question });

const deadlines = { deadline: judgeDeadline };

export const paperworkChecks = {
	"filing-fields": {
		title: "Fields of the filing",
		looksAt: "whether the definition carries each field the rule names",
		explain:
			"Agencies ask for the same facts under different heads. A field that the definition does not carry is listed as missing with its place; " +
			"an assumed value is not taken as given. Whether the value is right is not looked at here.",
		forms: { present: filing },
	},
	notice: {
		title: "Notice before the work",
		looksAt: "planned dates of the schedule, the date of this issue, and the notices recorded",
		explain:
			"The due date is counted back from the planned event, in calendar or business days; business days use the holidays of the jurisdiction's " +
			"file. What is not yet due on the date of this issue is not asked; what is past due has to be recorded as sent.",
		forms: deadlines,
	},
	report: {
		title: "Report after the work",
		looksAt: "recorded or planned dates of the schedule, the date of this issue, and the notices recorded",
		explain:
			"The due date is counted on from the event; where a rule names several, the earliest counts. What is not yet due on the date of this " +
			"issue is not asked.",
		forms: deadlines,
	},
	"string-notice": {
		title: "Notice before work on a string",
		looksAt: "dated events of the definition, the date of this issue, and the notices recorded",
		explain: "As `notice`, for events of one string: setting it, cementing it, testing it.",
		forms: deadlines,
	},
	"string-report": {
		title: "Report after work on a string",
		looksAt: "dated events of the definition, the date of this issue, and the notices recorded",
		explain: "As `report`, for events of one string: setting it, cementing it, testing it.",
		forms: deadlines,
	},
	document: {
		title: "Document to attach",
		looksAt: "nothing: the definition carries no such document",
		explain:
			"The rule asks for a paper that the definition does not carry (a plat, an affidavit, a bond, a laboratory report). A person has to attach " +
			"it and confirm it.",
		forms: { judgement: byHand },
	},
	judgement: {
		title: "For a person to judge",
		looksAt: "nothing: the rule's words take a person's judgment, or facts the definition does not carry",
		explain:
			"Words such as `adequate` and `competent`, and facts that no definition carries, are shown to a person and never passed by arithmetic.",
		forms: { judgement: byHand },
	},
	"string-judgement": {
		title: "For a person to judge, string by string",
		looksAt: "nothing: the rule's words take a person's judgment",
		explain: "As `judgement`, for rules that speak of one string.",
		forms: { judgement: byHand },
	},
} as const satisfies Readonly<Record<string, Check>>;
