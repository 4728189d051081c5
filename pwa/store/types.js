/**
 * The shapes that the modules of the store hand to each other. Types only, nothing runs here.
 * @typedef {{id: string, heading: string, about: string, device: string, n: number, stamp: string,
 *   made: string, by?: string, v: number, after?: string[], repairs?: string,
 *   body: Record<string, any>}} Entry
 * @typedef {{heading: string, about?: string, body: Record<string, any>, after?: string[],
 *   id?: string, repairs?: string}} Draft
 *
 * An entry as it lies on this device. `subject` is the id of what it is folded into ('' for a
 * strike-out whose target has not come yet); `seq` counts only while `epoch` is the current one.
 * @typedef {{id: string, subject: string, about: string, text: string, order?: string,
 *   seq?: number, epoch?: number, out?: boolean}} Kept
 * @typedef {{id: string, text: string, code: string, says: string, next: string, at: number,
 *   given?: {reason: string, made: string}, repaired?: string}} Refusal
 * @typedef {{id: string, heading: string|null, hidden: boolean, links: string[], wants: string[],
 *   value: any}} SubjectRow
 * @typedef {{sha: string, state: 'waiting'|'held'|'away'|'refused'|'given', stamp: string,
 *   size: number, spec?: boolean, code?: string, says?: string, next?: string}} PhotoRow
 * @typedef {{device: string, n: number, last: string, correctionMs: number}} Clock
 * @typedef {{cursor: string|null, epoch: number, count: number, digest: string, head: number, agreed: number|null,
 *   contact: number|null, recovering: 'pull'|'send'|null, recovered: number,
 *   photosAsked: number, askPhotos: boolean}} SyncRow
 * @typedef {{key: string|null, device: string, workshop: string, url: string,
 *   state: 'yes'|'unknown'|'revoked'}} Pairing
 *
 * The few calls of a database that the store makes; the tests bring one that lies in memory.
 * @typedef {{get(key: any): Promise<any>, getAll(query?: any, count?: number): Promise<any[]>,
 *   getAllKeys(query?: any, count?: number): Promise<any[]>, put(value: any, key?: any): Promise<any>,
 *   delete(key: any): Promise<void>, count(query?: any): Promise<number>, clear(): Promise<void>,
 *   index(name: string): {getAll(query?: any, count?: number): Promise<any[]>,
 *   getAllKeys(query?: any, count?: number): Promise<any[]>, count(query?: any): Promise<number>}}} Table
 * @typedef {{objectStore(name: string): Table, done: Promise<void>, abort(): void, commit?(): void}} Tx
 * @typedef {{transaction(names: string[], mode: 'readonly'|'readwrite',
 *   options?: {durability?: 'strict'|'relaxed'|'default'}): Tx, close(): void, name: string}} Database
 *
 * Everything that differs between a browser tab and a test.
 * @typedef {{database: (name: string) => Promise<Database>, now: () => number,
 *   random: (count: number) => Uint8Array, fetch: typeof fetch, made: (ms: number) => string,
 *   signal: <T>(value: T) => {value: T, peek(): T, subscribe(fn: (value: T) => void): () => void},
 *   lock: (name: string, work: () => Promise<void>) => Promise<boolean>,
 *   channel: (name: string, hear: (message: any) => void) => {post(message: any): void, close(): void},
 *   storage: () => Promise<{persisted: boolean, usage: number, quota: number}>,
 *   persist: () => Promise<boolean>, report: (error: unknown) => void}} World
 */

/** This file holds types only. */
export const types = null;
