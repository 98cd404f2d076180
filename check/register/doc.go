// Package register judges a whole folder of line sheets and keeps what it found in a state file, so that a run that was
// ended goes on where it was and an unchanged sheet is not judged twice.
//
// The state file is plain text, one JSON object a line, only ever added to:
//
//	{"check":"<16 hex>","basis":{...}}  the rules, the catalog rows (kind/id: SHA-256) and the tool of a run
//	{"check":"<16 hex>","sheet":{...}}  what was found about one sheet; the last line about a path counts
//
// check is the start of the SHA-256 of the object that follows. It shows damage, not forgery: approvals belong into the
// record of approvals. A line that does not agree with its check is not relied on, and its sheet is judged again. An end
// torn off by a crash is cut away: nothing was reported from it.
package register
