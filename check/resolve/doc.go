// Package resolve joins a line sheet with the catalog: every name becomes a catalog row, every end finds its neighbour.
//
// A name the catalog does not know, or that fits several rows, is a fault in the sheet and is reported with its place.
// A value the sheet leaves out stays unknown here; whether that matters is for the verdict.
package resolve
