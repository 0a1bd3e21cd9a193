// Reads one GLB from standard input and prints the Khronos validator's report as JSON.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";

const validator = createRequire(import.meta.url)("gltf-validator");
const report = await validator.validateBytes(new Uint8Array(readFileSync(0)), { maxIssues: 1000 });
console.log(JSON.stringify(report));
