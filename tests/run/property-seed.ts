import { configureGlobal } from "fast-check";

/* One seed for every property, so that a run fails for what was changed and for nothing else. PROPERTY_SEED tries another. */
configureGlobal({ seed: Number(process.env["PROPERTY_SEED"] ?? 20_260_504) });
