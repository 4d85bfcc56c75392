import { start } from "#app/start.tsx";

const root = document.getElementById("app");
if (root) void start(root);
