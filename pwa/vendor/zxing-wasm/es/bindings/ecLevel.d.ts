export type EcLevel = `${number}` | `${number}%` | "L" | "M" | "Q" | "H" | "";
