/**
 * The values that entries fold into: plain JSON on both sides, so that vectors can compare them.
 *
 * @typedef {{id: string, heading: string, about: string, device: string, n: number, stamp: string,
 *   made: string, by?: string | null, v: number, after?: string[], repairs?: string,
 *   body: Record<string, any>}} Entry
 * @typedef {{entry: Entry, order: string}} Ordered
 * @typedef {{value: any, order: string, device: string, entry: string}} Claim
 * @typedef {Claim & {lost: Claim[]}} FieldNow
 * @typedef {{id: string, reason: string, made: string, device: string}} Struck
 * @typedef {{id: string, heading: string, order: string, stamp: string, device: string,
 *   made: string, by: string | null, n: number, after: string[], body: Record<string, any>,
 *   clock_off: boolean, struck: Struck | null, stands?: boolean}} Fact
 * @typedef {{id: string, target: string, order: string, device: string, made: string,
 *   by: string | null, n: number, reason: string, counts: boolean}} Strike
 * @typedef {{id: string, heading: string, why: 'heading-unknown' | 'newer' | 'shape'}} Unread
 * @typedef {{id: string, heading: string | null, hidden: boolean, made: string | null,
 *   fields: Record<string, FieldNow>, facts: Fact[], strikes: Strike[],
 *   unread: Unread[]}} Subject
 * @typedef {{role: string, to: string}} Link
 */
export {};
