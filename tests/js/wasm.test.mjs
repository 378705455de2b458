// scripts/runtime/wasm.mjs and walk.mjs: numbers and instructions as the standard writes them.
import assert from "node:assert/strict";
import { test } from "node:test";

import { walk } from "../../scripts/runtime/walk.mjs";
import { encoded, encodedSigned, number, signed } from "../../scripts/runtime/wasm.mjs";

// WebAssembly Core Specification, section 5.2.2, and its note; 624485: the worked example of DWARF 4,
// appendix C, from memory; -2 and -129: the same appendix's table
const UNSIGNED = [[0, "00"], [3, "03"], [127, "7f"], [128, "8001"], [624485, "e58e26"]];
const SIGNED = [[2, "02"], [-2, "7e"], [127, "ff00"], [-127, "817f"], [128, "8001"], [-129, "ff7e"]];

for (const [value, bytes] of UNSIGNED) {
  test(`${value} is written and read as unsigned LEB128`, () => {
    assert.equal(Buffer.from(encoded(value)).toString("hex"), bytes);
    assert.deepEqual(number(Buffer.from("ff" + bytes, "hex"), 1), [value, 1 + bytes.length / 2]);
  });
}

for (const [value, bytes] of SIGNED) {
  test(`${value} is read as signed LEB128, and written where it is not below 0`, () => {
    assert.deepEqual(signed(Buffer.from(bytes, "hex"), 0), [value, bytes.length / 2]);
    if (value >= 0) assert.equal(Buffer.from(encodedSigned(value)).toString("hex"), bytes);
  });
}

test("the ends of 32 bits are read", () => {
  assert.equal(signed(Buffer.from("8080808078", "hex"), 0)[0], -(2 ** 31));
  assert.equal(signed(Buffer.from("ffffffff07", "hex"), 0)[0], 2 ** 31 - 1);
});

// bodies without local variables: instructions in hexadecimal -> what they name
const SEEN = [
  ["1005 0b", ["function 5"]],
  ["4110 2d 00 8008 0b", ["address 16", "address 1024"]],
  ["2303 2404 0b", ["global 3", "global 4"]],
  ["0e 02 00 01 02 12 07 0b", ["function 7"]],
  ["1f 40 02 00 01 00 02 00 0801 0b 0b", ["tag 1", "tag 1"]],
  ["44 0000000000001010 1a fc0a0000 fc0b00 0b", []],
  ["fd 0c 10101010101010101010101010101010 1a d206 0b", ["function 6"]],
  ["02 40 0c 00 0b 1101 00 0b", []],
];

for (const [written, wanted] of SEEN) {
  test(`${written} names ${wanted.join(", ") || "nothing"}`, () => {
    const found = [];
    const body = Buffer.from("00" + written.replace(/ /g, ""), "hex");
    walk(body, (kind, value) => found.push(`${kind} ${value}`));
    assert.deepEqual(found, wanted);
  });
}

test("an instruction that is not known stops the build, as does a passive segment", () => {
  assert.throws(() => walk(Buffer.from([0, 0xff]), () => {}), /not known/);
  assert.throws(() => walk(Buffer.from([0, 0xfc, 8, 0, 0, 0x0b]), () => {}), /passive/);
});
