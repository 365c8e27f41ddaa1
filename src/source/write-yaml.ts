import { stringify } from "yaml";

/**
 * A tree as YAML 1.2 text that `readYaml` reads back as the same tree. What looks like a number, or like true or false,
 * is quoted where it is text.
 */
export const writeYaml = (tree: unknown): string =>
	stringify(tree, { schema: "core", version: "1.2", lineWidth: 0, aliasDuplicateObjects: false });
