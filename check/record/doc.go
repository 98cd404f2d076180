// Package record keeps what must not be lost: an append-only file of JSON lines, each tied to the one before it.
//
// # Format
//
// A record is plain UTF-8 text. Every line ends with one line feed and is one JSON object with these keys in this order:
//
//	seq      1, 2, 3, ... without a gap
//	prev     SHA-256, in lower-case hex, of the whole line before it with its line feed; 64 zeros in line 1
//	time     RFC 3339 in UTC, as the caller gave it
//	kind     a word of lower-case letters, digits and hyphens
//	payload  any JSON
//	sum      SHA-256, in lower-case hex, of the bytes of this line that stand before ,"sum":
//
// So `sed -n 3p FILE | sha256sum` prints the prev of line 4, and any changed byte shows: within a line by its sum,
// and a line put in, taken out or moved by prev and seq.
//
// # What is promised
//
// Append returns only after the line and, for a new file, its name in the folder are on the disk (fsync). Writers take turns by
// a lock on FILE.lock, which the system frees when a process ends, however it ends; the empty lock file stays. A write
// cut short by a crash leaves a last line without its line feed, or with NUL bytes where the data never reached the disk.
// The next Append moves those bytes to FILE.torn-SEQ-DIGEST, appends a line of kind set-aside that names that file, and
// tells its caller. A write that fails, on a full disk say, is taken back. Neither touches a line that was acknowledged.
//
// # What is not
//
// The chain has no key. Somebody who may write the file can cut lines off its end, or write all of it anew. Against
// that, note the head (the SHA-256 of the last line) elsewhere, and give it to Verify later; or sign what is recorded.
package record
