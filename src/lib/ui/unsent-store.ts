// Where a device keeps what it has not sent yet: IndexedDB, which works on plain http too; else memory.
import { makeEvent, nextCounter, uuidFrom, type Unsent } from './unsent-queue.ts';
import type { EventBody } from '../class/event.ts';

export interface UnsentStore {
	/** False in memory: it is gone with the page. */
	readonly kept: boolean;
	/** What waits, when the last thing was said here, sent or not, and under which counter (0: nothing yet). */
	readonly read: () => Promise<{ readonly said: readonly Unsent[]; readonly lastAt: number | null; readonly counter: number }>;
	/** Makes the event under the next counter and keeps it, in one transaction: two tabs never share a counter. */
	readonly say: (body: EventBody, seen: number) => Promise<Unsent>;
	readonly drop: (ids: readonly string[]) => Promise<void>;
	readonly refuse: (id: string) => Promise<void>;
}

export const drawId = (): string => uuidFrom(crypto.getRandomValues(new Uint8Array(16)));

/** `skirt`: one class and one member. Two learners on one tablet never meet in it. */
export async function openStore(skirt: string): Promise<UnsentStore> {
	try {
		await connect();
		return inDatabase(skirt);
	} catch {
		// Private windows and full disks have no database. The page still works, and says so.
		return inMemory();
	}
}

const done = <T>(request: IDBRequest<T>): Promise<T> =>
	new Promise((resolve, reject) => {
		request.onsuccess = () => resolve(request.result);
		request.onerror = () => reject(request.error);
	});
/** Resolves when the transaction is on the device, not when its last request is. */
const finished = (transaction: IDBTransaction): Promise<void> =>
	new Promise((resolve, reject) => {
		transaction.oncomplete = () => resolve();
		transaction.onabort = transaction.onerror = () => reject(transaction.error);
	});

let connection: Promise<IDBDatabase> | null = null;

/** One connection for the page, made again when the browser or a newer page in another tab has ended it. */
function connect(): Promise<IDBDatabase> {
	const request = connection ? null : indexedDB.open('skirtwright', 1);
	if (!request) return connection!;
	request.onupgradeneeded = () => {
		request.result.createObjectStore('said', { keyPath: ['skirt', 'id'] });
		request.result.createObjectStore('last', { keyPath: 'skirt' });
	};
	connection = done(request).then((database) => {
		database.onversionchange = () => {
			database.close();
			connection = null;
		};
		database.onclose = () => (connection = null);
		return database;
	});
	connection.catch(() => (connection = null));
	return connection;
}

interface Row extends Unsent { readonly skirt: string }
interface Last { readonly skirt: string; readonly device: string; readonly counter: number; readonly at: number }

function inDatabase(skirt: string): UnsentStore {
	const mine = IDBKeyRange.bound([skirt], [skirt, []]);
	const begin = async (mode: IDBTransactionMode): Promise<IDBTransaction> =>
		(await connect()).transaction(['said', 'last'], mode, { durability: mode === 'readwrite' ? 'strict' : 'default' });
	return {
		kept: true,
		async read() {
			const transaction = await begin('readonly');
			const [rows, last] = await Promise.all([
				done<Row[]>(transaction.objectStore('said').getAll(mine)),
				done<Last | undefined>(transaction.objectStore('last').get(skirt))
			]);
			return { said: rows.map(({ skirt: _, ...event }) => event), lastAt: last?.at ?? null, counter: last?.counter ?? 0 };
		},
		async say(body, seen) {
			const transaction = await begin('readwrite');
			const last = await done<Last | undefined>(transaction.objectStore('last').get(skirt));
			// A device has a name for each skirt, so that its names say nothing about who shares a tablet.
			const event = makeEvent(body, drawId(), last?.device ?? drawId(), nextCounter(last?.counter ?? 0, seen), Date.now());
			const { device, counter, at } = event;
			transaction.objectStore('last').put({ skirt, device, counter, at } satisfies Last);
			transaction.objectStore('said').put({ skirt, ...event } satisfies Row);
			await finished(transaction);
			return event;
		},
		async drop(ids) {
			const transaction = await begin('readwrite');
			for (const id of ids) transaction.objectStore('said').delete([skirt, id]);
			await finished(transaction);
		},
		async refuse(id) {
			const transaction = await begin('readwrite');
			const said = transaction.objectStore('said');
			const row = await done<Row | undefined>(said.get([skirt, id]));
			if (row) said.put({ ...row, refused: true } satisfies Row);
			await finished(transaction);
		}
	};
}

function inMemory(): UnsentStore {
	const device = drawId();
	let counter = 0;
	let said: readonly Unsent[] = [];
	return {
		kept: false,
		read: async () => ({ said, lastAt: said.at(-1)?.at ?? null, counter }),
		async say(body, seen) {
			counter = nextCounter(counter, seen);
			const event = makeEvent(body, drawId(), device, counter, Date.now());
			said = [...said, event];
			return event;
		},
		async drop(ids) {
			said = said.filter(({ id }) => !ids.includes(id));
		},
		async refuse(id) {
			said = said.map((event) => (event.id === id ? { ...event, refused: true } : event));
		}
	};
}
