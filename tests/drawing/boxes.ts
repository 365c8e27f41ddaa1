import type { Drawing, Shape } from "../../src/document/shapes.ts";
import { textWidth } from "../../src/measure/text-width.ts";

export interface Bounds {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

const union = (boxes: readonly Bounds[]): Bounds => ({
	left: Math.min(...boxes.map((box) => box.left)),
	top: Math.min(...boxes.map((box) => box.top)),
	right: Math.max(...boxes.map((box) => box.right)),
	bottom: Math.max(...boxes.map((box) => box.bottom)),
});

/** Corners and end points of path data; of an arc its end, of a curve its control points, which contain it. */
export const pathPoints = (d: string): [number, number][] => {
	const points: [number, number][] = [];
	let [x, y, startX, startY] = [0, 0, 0, 0];
	for (const [, letter = "", rest = ""] of d.matchAll(/([a-z])([^a-z]*)/gi)) {
		const numbers = (rest.match(/-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?/gi) ?? []).map(Number);
		const relative = letter === letter.toLowerCase();
		const take = { m: 2, l: 2, t: 2, h: 1, v: 1, q: 4, c: 6, a: 7, z: 0 }[letter.toLowerCase()] ?? 2;
		if (letter.toLowerCase() === "z") {
			[x, y] = [startX, startY];
			continue;
		}
		for (let i = 0; i + take <= numbers.length; i += take) {
			const part = numbers.slice(i, i + take);
			const [baseX, baseY] = relative ? [x, y] : [0, 0];
			if (letter.toLowerCase() === "h") x = baseX + (part[0] ?? 0);
			else if (letter.toLowerCase() === "v") y = baseY + (part[0] ?? 0);
			else {
				for (let k = letter.toLowerCase() === "a" ? take - 2 : 0; k + 4 <= take; k += 2)
					points.push([baseX + (part[k] ?? 0), baseY + (part[k + 1] ?? 0)]);
				x = baseX + (part[take - 2] ?? 0);
				y = baseY + (part[take - 1] ?? 0);
			}
			points.push([x, y]);
			if (letter.toLowerCase() === "m" && i === 0) [startX, startY] = [x, y];
		}
	}
	return points;
};

const pathBounds = (d: string): Bounds[] => {
	const points = pathPoints(d);
	if (points.length === 0) return [];
	const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
	return [{ left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) }];
};

/** What a shape covers, its clip taken into account; strokes are taken without their width. */
export const boundsOf = (shape: Shape): Bounds[] => {
	switch (shape.kind) {
		case "path":
			return pathBounds(shape.clip ?? shape.d);
		case "line":
			return [
				{
					left: Math.min(shape.x1, shape.x2),
					right: Math.max(shape.x1, shape.x2),
					top: Math.min(shape.y1, shape.y2),
					bottom: Math.max(shape.y1, shape.y2),
				},
			];
		case "text": {
			const wide = textWidth(shape.text, {
				size: shape.size,
				...(shape.weight === undefined ? {} : { weight: shape.weight }),
				...(shape.italic === undefined ? {} : { italic: shape.italic }),
			});
			const left =
				shape.anchor === "end" ? shape.x - wide : shape.anchor === "middle" ? shape.x - wide / 2 : shape.x;
			const [up, down] = [shape.size * 0.68, shape.size * 0.22];
			if (shape.rotate !== undefined && shape.rotate % 180 !== 0)
				return [{ left: shape.x - up, right: shape.x + down, top: shape.y - wide, bottom: shape.y + wide }];
			return [{ left, right: left + wide, top: shape.y - up, bottom: shape.y + down }];
		}
		case "group":
			return shape.children.flatMap(boundsOf).map((box) => ({
				left: box.left + shape.dx,
				right: box.right + shape.dx,
				top: box.top + shape.dy,
				bottom: box.bottom + shape.dy,
			}));
	}
};

/** Every group, at any depth, with what it covers. */
export const groupsOf = (
	drawing: Drawing,
): {
	readonly name: string;
	readonly shape: Extract<Shape, { kind: "group" }>;
	readonly bounds: Bounds;
}[] => {
	const visit = (shapes: readonly Shape[]): ReturnType<typeof groupsOf> =>
		shapes.flatMap((shape) => {
			if (shape.kind !== "group") return [];
			const inner = visit(shape.children);
			const covered = boundsOf(shape);
			return shape.name === undefined || covered.length === 0
				? inner
				: [{ name: shape.name, shape, bounds: union(covered) }, ...inner];
		});
	return visit(drawing.shapes);
};

export const labelsOf = (drawing: Drawing) =>
	groupsOf(drawing).filter(({ name }) => name.startsWith("label "));

export const textsOf = (shapes: readonly Shape[]): Extract<Shape, { kind: "text" }>[] =>
	shapes.flatMap((shape) =>
		shape.kind === "group" ? textsOf(shape.children) : shape.kind === "text" ? [shape] : [],
	);

/** Pairs of labels whose boxes share ground. */
export const overlaps = (drawing: Drawing): string[] => {
	const labels = labelsOf(drawing);
	return labels.flatMap((a, i) =>
		labels
			.slice(i + 1)
			.filter(
				(b) =>
					a.bounds.left < b.bounds.right - 0.1 &&
					b.bounds.left < a.bounds.right - 0.1 &&
					a.bounds.top < b.bounds.bottom - 0.1 &&
					b.bounds.top < a.bounds.bottom - 0.1,
			)
			.map((b) => `${a.name} × ${b.name}`),
	);
};

const meet = (a: Bounds, b: Bounds): boolean =>
	a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

/** Paths of which their clip leaves nothing: drawn in vain, and fatal to the library that makes pictures. */
export const cutAway = (shapes: readonly Shape[]): string[] =>
	shapes.flatMap((shape) => {
		if (shape.kind === "group") return cutAway(shape.children).map((d) => `${shape.name ?? ""} ${d}`);
		if (shape.kind !== "path" || shape.clip === undefined) return [];
		const [own, clip] = [pathBounds(shape.d), pathBounds(shape.clip)];
		return own.some((a) => clip.some((b) => meet(a, b))) ? [] : [shape.d.slice(0, 40)];
	});

/** Shapes that reach outside the drawing's frame, by name of their group. */
export const outside = (drawing: Drawing): string[] => {
	const found: string[] = [];
	const visit = (shapes: readonly Shape[], dx: number, dy: number, name: string): void => {
		for (const shape of shapes) {
			if (shape.kind === "group") {
				visit(shape.children, dx + shape.dx, dy + shape.dy, shape.name ?? name);
				continue;
			}
			if (shape.kind === "path" && shape.d === "") found.push(`${name}: a path of nothing`);
			for (const box of boundsOf(shape)) {
				const slack = 0.5;
				const over =
					box.left + dx < -slack ||
					box.top + dy < -slack ||
					box.right + dx > drawing.width + slack ||
					box.bottom + dy > drawing.height + slack;
				if (over || Object.values(box).some((value) => !Number.isFinite(value)))
					found.push(`${name} ${shape.kind === "text" ? shape.text : shape.kind} ${JSON.stringify(box)}`);
			}
		}
	};
	visit(drawing.shapes, 0, 0, "");
	return found;
};

type Segment = readonly [readonly [number, number], readonly [number, number]];

const turn = (
	a: readonly [number, number],
	b: readonly [number, number],
	c: readonly [number, number],
): number => Math.sign(Math.round(((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])) * 100));

/** Proper crossings only: leaders may start from one place, or lie along each other. */
const cross = ([a, b]: Segment, [c, d]: Segment): boolean =>
	turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;

/** Pairs of leaders that cross. */
export const crossedLeaders = (drawing: Drawing): string[] => {
	const leaders = groupsOf(drawing)
		.filter(({ name }) => name.startsWith("leader "))
		.map(({ name, shape }) => {
			const [line] = shape.children;
			const points = line?.kind === "path" ? pathPoints(line.d) : [];
			const segments = points.slice(1).map((point, i): Segment => [points[i] ?? point, point]);
			return { name, segments };
		});
	return leaders.flatMap((a, i) =>
		leaders
			.slice(i + 1)
			.filter((b) => a.segments.some((one) => b.segments.some((other) => cross(one, other))))
			.map((b) => `${a.name} × ${b.name}`),
	);
};
