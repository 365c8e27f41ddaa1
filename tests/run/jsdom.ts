/**
 * jsdom, whatever was loaded before it. pdf.js brings an `Iterator` of its own to a Node that has none; jsdom, read after
 * that, looks for one in each new window, where nobody brought it. It is put aside while jsdom is read.
 */
const brought = Object.getOwnPropertyDescriptor(globalThis, "Iterator");
if (brought?.configurable === true) Reflect.deleteProperty(globalThis, "Iterator");
const { JSDOM, VirtualConsole } = await import("jsdom");
if (brought?.configurable === true) Object.defineProperty(globalThis, "Iterator", brought);

export { JSDOM, VirtualConsole };
