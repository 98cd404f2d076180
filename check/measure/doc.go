// Package measure works out the physics of a transfer line: pure functions of SI quantities, one file per method.
//
// Each method names its source and how that is known above the numbers it uses. Nothing here compares a value with a
// limit: limits belong to the rules. A method refuses to answer outside the range it is known for.
package measure
