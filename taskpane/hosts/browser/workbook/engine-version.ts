/** The version of the engine's format that our own data is written in; the engine brings it up to its own. */
export const ENGINE_VERSION = "19.3.2";
