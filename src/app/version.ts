/** Stands in every row of the log and on the page about the app; the same as in package.json. */
export const APP_VERSION = "0.1.0";
