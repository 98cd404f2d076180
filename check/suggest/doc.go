// Package suggest looks for parts that would make a line fit, or fitter.
//
// It tries parts of the catalog in the sheet and lets the rules judge every changed sheet; it decides nothing itself. What
// a new part still has to prove is written beside it: a suggestion is to be engineered and confirmed by a person.
package suggest
