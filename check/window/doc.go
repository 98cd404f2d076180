// Package window draws the line between the pressures and temperatures that a transfer line may see and those it may not.
//
// The region is that of the same tables the facts are built from. It ends where a part's limit does, and also where
// nothing is known any more: what is not known is never inside.
package window
