import {
	colebrookFrictionFactor,
	FULLY_TURBULENT,
	pipeFriction,
	reducedFrictionFactor,
	reynoldsNumber,
	virkFrictionFactor,
} from "./pipe-friction.ts";

interface Flow {
	readonly ρ: number;
	readonly Q: number;
	readonly d: number;
	readonly L: number;
	readonly μ: number;
	readonly ε: number;
	readonly DR: number;
}

/** Friction of the fluid as pumped over one length of pipe [psi], by the published formulas in turn, without origins. */
export const frictionOver = ({ ρ, Q, d, L, μ, ε, DR }: Flow): number => {
	const Re = value(reynoldsNumber.compute({ ρ, Q, d, μ } as never));
	const f_w = value(colebrookFrictionFactor.compute({ Re, ε, d } as never));
	const f =
		Re < FULLY_TURBULENT
			? f_w
			: value(
					reducedFrictionFactor.compute({
						f_w,
						DR,
						f_v: value(virkFrictionFactor.compute({ Re } as never)),
					} as never),
				);
	return value(pipeFriction.compute({ f, ρ, Q, d, L } as never));
};

const value = (computed: number | { readonly value: number }): number =>
	typeof computed === "number" ? computed : computed.value;
