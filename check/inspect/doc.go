// Package inspect makes the list of what to look at, read and measure on one line before it is used, and takes the filled
// record back: the readings go into a copy of the sheet, which is judged as any other.
//
// What a sheet has no place for, such as damage to a valve, a failed leak test or a hold point that was not passed, is
// judged here. A reading left empty is never taken as good: the job is then not shown to be safe.
package inspect
