import { setPaper } from "./set-paper.ts";

/** What a thread of the pool does with a task. */
export default setPaper;
