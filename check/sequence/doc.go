// Package sequence derives the operating sequence of a transfer line, and plays a sequence step by step to find what must
// not happen: liquid shut in, a hose parted under pressure, flow the wrong way, a vessel filled too far or drawn to a vacuum.
//
// The play is simple on purpose. It knows which stretch is joined to which, what pressure a source can bring there (kPa
// gauge) and which fluid stands in it; the gas of a closed vessel grows and shrinks by Boyle. Times follow from the planned
// flow and gas from volumes and set pressures; it knows nothing of flow losses or of gas that lingers. What the sheet does
// not show, such as a valve that belongs to a vessel, is an item called "source".
package sequence
