const OUTSIDE = /^(https?:|mailto:|tel:)/i;

/** `sorrel-1.regulator-appendix#casing-loads`: an id of another paper. */
const ELSEWHERE = /^([^#]+)#(.+)$/;

/** Where a link leads: an address outside, an id of the paper, or one of another paper, in a file of a kind. */
export const linkTarget = (to: string, kind: "pdf" | "html"): string => {
	if (OUTSIDE.test(to)) return to;
	const [, file, id] = ELSEWHERE.exec(to) ?? [];
	return file === undefined ? `#${to.replace(/^#/, "")}` : `${file}.${kind}#${id}`;
};
