// Package sheet reads a line sheet: the YAML file that describes one transfer line.
//
// Every value is read as the text the author typed, whatever YAML would have made of it, and every
// fault is reported at once with its line and column, what was wanted and the nearest known name.
// A value that is not written is not a fault here; judging what is missing is the rules' work.
package sheet
