import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import type { Dimension } from "../units/dimensions.ts";
import { tickString } from "../units/format.ts";
import { parseQuantity } from "../units/parse.ts";
import { faultAt, isBlock, itemsAt, scalarShown, valueAt } from "./fault.ts";

/** A tenth of a percent: shares are written as whole or tenth percents. */
const SHARE_TOLERANCE = 0.001;

/** Shares of one whole that do not add up to it. */
export const sharesOfWhole = (tree: unknown): readonly Diagnostic[] => {
	const list: Path = ["stimulation", "water_sources"];
	const shares = itemsAt(tree, list).map((item) => {
		const text = isBlock(item) ? item["share"] : undefined;
		const read = typeof text === "string" ? parseQuantity(text, "share") : undefined;
		// A share above the whole is told of by itself.
		return read?.ok && read.value <= 1 ? read.value : Number.NaN;
	});
	const sum = shares.reduce((total, share) => total + share, 0);
	if (shares.length === 0 || Number.isNaN(sum) || Math.abs(sum - 1) <= SHARE_TOLERANCE) return [];
	return [
		faultAt({
			code: "definition/shares-of-whole",
			at: list,
			what: message("definition/shares-of-whole.what"),
			expected: "100 %",
			found: `${tickString(sum * 100)} %`,
			mend: message("definition/shares-of-whole.mend"),
		}),
	];
};

/** What the monitors of each gas are read in. */
const ALARM_UNITS: Readonly<Record<string, Dimension>> = {
	"hydrogen sulfide": "gas-fraction",
	"sulfur dioxide": "gas-fraction",
	"carbon monoxide": "gas-fraction",
	flammable: "explosive-limit",
	oxygen: "share",
};

/** Digits of an emergency number: the short national one, or a whole telephone number. */
const SHORT_NUMBER = 3;
const WHOLE_NUMBER = 7;

/** A number that nobody can dial. */
export const emergencyNumber = (tree: unknown): readonly Diagnostic[] => {
	const at: Path = ["safety", "emergency", "number"];
	const written = valueAt(tree, at);
	if (typeof written !== "string") return [];
	const digits = written.replaceAll(/\D/gu, "").length;
	if (digits === SHORT_NUMBER || digits >= WHOLE_NUMBER) return [];
	return [
		faultAt({
			code: "definition/emergency-number",
			at,
			what: message("definition/emergency-number.what", { count: digits }),
			expected: message("definition/emergency-number.expected", {
				short: String(SHORT_NUMBER),
				whole: String(WHOLE_NUMBER),
			}),
			found: written,
			mend: message("definition/emergency-number.mend"),
		}),
	];
};

/** Ranges that are written high first. */
export const lowBelowHigh = (tree: unknown): readonly Diagnostic[] => {
	const faults: Diagnostic[] = [];
	const raise = (at: Path, found: string): void => {
		faults.push(
			faultAt({
				code: "definition/low-above-high",
				at,
				what: message("definition/low-above-high.what"),
				expected: message("definition/low-above-high.expected"),
				found,
				mend: message("definition/low-above-high.mend"),
			}),
		);
	};
	itemsAt(tree, ["schedule"]).forEach((_, i) => {
		const path: Path = ["schedule", i, "days"];
		const days = itemsAt(tree, path);
		const [low, base, high] = days;
		if (days.length !== 3 || !days.every((day) => typeof day === "number")) return;
		if (Number(low) > Number(base) || Number(base) > Number(high)) raise(path, days.join(", "));
	});
	const returned: Path = ["stimulation", "flowback", "returned"];
	const [low, high] = itemsAt(tree, returned).map((share) =>
		typeof share === "string" ? parseQuantity(share, "share") : undefined,
	);
	if (low?.ok && high?.ok && low.value <= 1 && low.value > high.value)
		raise(returned, itemsAt(tree, returned).join(", "));
	for (const place of ["cased", "open_hole"]) {
		const path: Path = ["design_basis", "friction", place];
		const [least, greatest] = itemsAt(tree, path);
		if (typeof least === "number" && typeof greatest === "number" && least > greatest)
			raise(path, `${least}, ${greatest}`);
	}
	itemsAt(tree, ["safety", "gas_alarms"]).forEach((alarm, i) => {
		const dimension = isBlock(alarm) ? ALARM_UNITS[String(alarm["gas"])] : undefined;
		if (!isBlock(alarm) || dimension === undefined) return;
		const [low, high] = [alarm["low"], alarm["high"]].map((text) =>
			typeof text === "string" ? parseQuantity(text, dimension) : undefined,
		);
		if (low?.ok && high?.ok && low.value > high.value)
			raise(["safety", "gas_alarms", i], `${scalarShown(alarm["low"])}, ${scalarShown(alarm["high"])}`);
	});
	itemsAt(tree, ["casing"]).forEach((_, i) => {
		const path: Path = ["casing", i, "running", "torque"];
		const torque = valueAt(tree, path);
		if (!isBlock(torque)) return;
		const [least, greatest] = [torque["least"], torque["greatest"]].map((text) =>
			typeof text === "string" ? parseQuantity(text, "torque") : undefined,
		);
		if (least?.ok && greatest?.ok && least.value > greatest.value)
			raise(path, `${scalarShown(torque["least"])}, ${scalarShown(torque["greatest"])}`);
	});
	itemsAt(tree, ["well_control", "preventers"]).forEach((_, i) => {
		const path: Path = ["well_control", "preventers", i, "test"];
		const test = valueAt(tree, path);
		if (!isBlock(test)) return;
		const [lowTest, highTest] = [test["low"], test["high"]].map((text) =>
			typeof text === "string" ? parseQuantity(text, "pressure") : undefined,
		);
		if (lowTest?.ok && highTest?.ok && lowTest.value > highTest.value)
			raise(path, `${scalarShown(test["low"])}, ${scalarShown(test["high"])}`);
	});
	return faults;
};
