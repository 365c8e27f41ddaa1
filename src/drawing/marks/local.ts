import type { AxisPoint, Point } from "../well-axis.ts";

/** From distances across the hole (right or up positive) and along it (deeper positive) to the page. */
export const local =
	({ x, y, normal }: AxisPoint) =>
	(across: number, along: number): Point => [
		x + normal[0] * across - normal[1] * along,
		y + normal[1] * across + normal[0] * along,
	];
