// Package compare reviews a change: what differs between two sheets of a line, or between two stored verdicts on it, and
// what that does to the findings, the margins and the answer.
//
// The sheets are compared by meaning: parts are matched by id and then by place, quantities by value and names by the
// catalog entry they stand for. Order of text, units and comments make no difference.
package compare
