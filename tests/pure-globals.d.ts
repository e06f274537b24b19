// What every JavaScript host has though ECMAScript itself does not name it: allowed in shared/ and sim/.
declare function structuredClone<T>(value: T): T;
declare function atob(data: string): string;
declare function btoa(data: string): string;

interface TextEncoder {
	encode(input?: string): Uint8Array<ArrayBuffer>;
}
declare var TextEncoder: { new (): TextEncoder };

interface TextDecoder {
	decode(input?: Uint8Array): string;
}
declare var TextDecoder: { new (label?: string, options?: { fatal?: boolean }): TextDecoder };
