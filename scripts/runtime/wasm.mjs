// WebAssembly modules read and written, as far as parting one in two needs it.
// The format: WebAssembly Core Specification 3.0, chapter 5; sections and opcodes by their numbers.

export const SECTION = {
  type: 1, import: 2, function: 3, table: 4, memory: 5, global: 6, export: 7, start: 8, element: 9,
  code: 10, data: 11, tag: 13,
};
export const KIND = { function: 0, table: 1, memory: 2, global: 3, tag: 4 }; // of imports, exports

/* [unsigned LEB128 number at ``at``, where it ends] */
export function number(bytes, at) {
  let value = 0;
  for (let scale = 1; ; scale *= 128) {
    const byte = bytes[at++];
    value += (byte & 127) * scale;
    if (byte < 128) return [value, at];
  }
}

/* [signed LEB128 number of up to 32 bits at ``at``, where it ends] */
export function signed(bytes, at) {
  let value = 0;
  for (let shift = 0; ; shift += 7) {
    const byte = bytes[at++];
    value |= (byte & 127) << shift;
    if (byte < 128) {
      const short = shift < 25 && (byte & 64);
      return [short ? value | (-1 << (shift + 7)) : value, at];
    }
  }
}

/* An unsigned number as LEB128. */
export function encoded(value) {
  const made = [];
  do {
    made.push((value % 128) | (value > 127 ? 128 : 0));
    value = Math.floor(value / 128);
  } while (value);
  return made;
}

/* A whole number from 0 up as signed LEB128. */
export function encodedSigned(value) {
  const made = encoded(value);
  if (!(made.at(-1) & 64)) return made;
  made[made.length - 1] |= 128;
  return [...made, 0];
}

const after = (bytes, at) => number(bytes, at)[1];

/* {bytes, sections: Map of number -> content}; custom sections keep their places in ``order``. */
export function parse(bytes) {
  const order = [];
  for (let at = 8; at < bytes.length;) {
    const [length, start] = number(bytes, at + 1);
    order.push([bytes[at], bytes.subarray(start, start + length)]);
    at = start + length;
  }
  return { head: bytes.subarray(0, 8), order, sections: new Map(order.filter(([kind]) => kind)) };
}

export function assemble(head, order) {
  const parts = order.map(([kind, content]) => joined([kind, ...encoded(content.length)], content));
  return joined(head, ...parts);
}

export function joined(...parts) {
  return Buffer.concat(parts.map((part) => Buffer.from(part)));
}

export function vector(items) {
  return joined(encoded(items.length), ...items);
}

export function sized(content) {
  return joined(encoded(content.length), content);
}

export const named = (text) => sized(Buffer.from(text));

/* The entries of a section, each as bytes; ``end(bytes, at)`` says where one ends. */
export function entries(section, end, at = 0) {
  const found = [];
  const [count, start] = number(section, at);
  at = start;
  for (let index = 0; index < count; index += 1) {
    const ends = end(section, at);
    found.push(section.subarray(at, ends));
    at = ends;
  }
  return found;
}

function afterLimits(bytes, at) {
  const more = bytes[at] & 1;
  at = after(bytes, at + 1);
  return more ? after(bytes, at) : at;
}

const AFTER_TYPE = {
  [KIND.function]: after,
  [KIND.table]: (bytes, at) => afterLimits(bytes, at + 1),
  [KIND.memory]: afterLimits,
  [KIND.global]: (_, at) => at + 2,
  [KIND.tag]: (bytes, at) => after(bytes, at + 1),
};

/* Constant expressions as linkers write them: one instruction and the end. */
export function afterConstant(bytes, at) {
  const skip = { 0x41: after, 0x42: after, 0x23: after, 0xd2: after, 0xd0: after };
  const width = { 0x43: 4, 0x44: 8 }[bytes[at]];
  const end = width ? at + 1 + width : skip[bytes[at]]?.(bytes, at + 1);
  if (bytes[end] !== 0x0b) throw new Error("a constant is not written as expected");
  return end + 1;
}

export const afterTable = AFTER_TYPE[KIND.table];
export const afterMemory = afterLimits;
export const afterTag = AFTER_TYPE[KIND.tag];
export const afterGlobal = (bytes, at) => afterConstant(bytes, at + 2);
export const afterIndex = after;
export const afterBody = (bytes, at) => number(bytes, at).reduce((length, start) => length + start);

export function afterType(bytes, at) {
  if (bytes[at] !== 0x60) throw new Error("a type that is no function's");
  const [given, start] = number(bytes, at + 1);
  const [back, results] = number(bytes, start + given);
  return results + back;
}

/* [{kind, about}] of an import section: ``about`` is the type as written. */
export function imports(section) {
  const end = (bytes, at) => {
    for (let name = 0; name < 2; name += 1) at = afterBody(bytes, at);
    return AFTER_TYPE[bytes[at]](bytes, at + 1);
  };
  return entries(section, end).map((entry) => {
    let at = 0;
    for (let name = 0; name < 2; name += 1) at = afterBody(entry, at);
    return { kind: entry[at], about: entry.subarray(at + 1) };
  });
}

/* [{name, kind, index}] of an export section. */
export function exportsOf(section) {
  const end = (bytes, at) => after(bytes, afterBody(bytes, at) + 1);
  return entries(section, end).map((entry) => {
    const at = afterBody(entry, 0);
    const name = Buffer.from(entry.subarray(number(entry, 0)[1], at)).toString();
    return { name, kind: entry[at], index: number(entry, at + 1)[0] };
  });
}

/* Where the instructions of a function's body begin: after its local variables. */
export function instructions(body) {
  let [count, at] = number(body, 0);
  for (; count; count -= 1) at = after(body, at) + 1;
  return at;
}
