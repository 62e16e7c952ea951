// The sum by which a PNG file checks its parts (PNG, third edition, annex D); Node has one of its own
// only since 22.2.
export function crc32(bytes) {
  let sum = 0xFFFFFFFF;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? (sum >>> 1) ^ 0xEDB88320 : sum >>> 1;
  }
  return (sum ^ 0xFFFFFFFF) >>> 0;
}
