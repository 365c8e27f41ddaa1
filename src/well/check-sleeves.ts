import type { Path } from "../diagnostics/path.ts";
import { inches, SAME_DIAMETER } from "./check-passage.ts";
import { type Desk, fault, placeOf } from "./desk.ts";
import type { CasingString, Sleeve, Stimulation } from "./well.ts";

const AT: Path = ["stimulation", "stages", "sleeves"];

/**
 * Every sleeve belongs to a stage; seats grow smaller toward the toe; a ball passes the pipe and every seat above its
 * own, and lands on its own.
 */
export const checkSleeves = (
	{ sleeves, stages, treatingString }: Stimulation,
	treated: CasingString | undefined,
	desk: Desk,
): void => {
	if (sleeves === undefined) return;
	const pipes = [...(treatingString?.sections ?? []), ...(treated?.sections ?? [])];
	const drift = pipes.reduce((least, { drift }) => Math.min(least, drift.value), Number.POSITIVE_INFINITY);
	for (const [i, sleeve] of sleeves.entries()) {
		if (stages.length > 0 && !stages.some(({ number }) => number === sleeve.stage)) {
			unknownStage(sleeve, stages.length, desk);
			continue;
		}
		const below = sleeves[i - 1];
		if (below !== undefined && below.seat.value >= sleeve.seat.value - SAME_DIAMETER)
			seatOrder(below, sleeve, desk);
		else checkBall(sleeve, sleeves.slice(i + 1), drift, desk);
	}
};

const unknownStage = ({ stage, seat }: Sleeve, count: number, desk: Desk): void => {
	fault(desk, "well/unknown-stage", placeOf(seat, AT), {
		what: `a sleeve is of stage ${stage}, and there is none`,
		expected: `a stage from 1 to ${count}`,
		found: String(stage),
		mend: "correct the number, or the count of stages",
	});
};

const seatOrder = (below: Sleeve, above: Sleeve, desk: Desk): void => {
	fault(desk, "well/sleeve-balls", placeOf(above.seat, AT), {
		what: `the seat of stage ${above.stage} is no larger than the seat of stage ${below.stage} below it`,
		expected: `more than ${inches(below.seat.value)}`,
		found: inches(above.seat.value),
		mend: "let the seats grow from the toe up",
		related: [{ at: placeOf(below.seat, AT), label: `seat of stage ${below.stage}` }],
	});
};

const checkBall = (
	{ stage, seat, ball }: Sleeve,
	above: readonly Sleeve[],
	drift: number,
	desk: Desk,
): void => {
	if (ball === undefined) return;
	if (ball.value <= seat.value + SAME_DIAMETER) {
		fault(desk, "well/sleeve-balls", placeOf(ball, AT), {
			what: `the ball of stage ${stage} does not land on its seat`,
			expected: `more than ${inches(seat.value)}`,
			found: inches(ball.value),
			mend: "choose a larger ball, or a smaller seat",
			related: [{ at: placeOf(seat, AT), label: "its seat" }],
		});
		return;
	}
	// Seats that are out of order themselves are told as such.
	const [narrowest] = above
		.filter((each) => each.seat.value > seat.value)
		.sort((a, b) => a.seat.value - b.seat.value);
	if (narrowest !== undefined && ball.value >= narrowest.seat.value - SAME_DIAMETER) {
		fault(desk, "well/sleeve-balls", placeOf(ball, AT), {
			what: `the ball of stage ${stage} does not pass the seat of stage ${narrowest.stage} above it`,
			expected: `less than ${inches(narrowest.seat.value)}`,
			found: inches(ball.value),
			mend: "choose a smaller ball, or larger seats above",
			related: [{ at: placeOf(narrowest.seat, AT), label: `seat of stage ${narrowest.stage}` }],
		});
		return;
	}
	if (ball.value >= drift - SAME_DIAMETER)
		fault(desk, "well/sleeve-balls", placeOf(ball, AT), {
			what: `the ball of stage ${stage} does not pass the drift of the pipe that it is pumped down`,
			expected: `less than ${inches(drift)}`,
			found: inches(ball.value),
			mend: "choose a smaller ball and seat, or larger pipe",
		});
};
