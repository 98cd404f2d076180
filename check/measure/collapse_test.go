package measure_test

import (
	"testing"

	"lineworthy/check/measure"
)

// Bresse's formula in its other form, 2 E/(1-v^2) (t/D)^3 (handbooks, recalled): a wall of 1/100 of the diameter buckles at
// 0.44 MPa; a third of it is 147 kPa. Such a wall is one for 68 bar(g) at 340 MPa.
func TestCollapse(t *testing.T) {
	near(t, 2*200e9/0.91*1e-6/3, measure.Collapse(68*bar), 1e-9)
	within(t, 147e3, measure.Collapse(68*bar), 1e3)
	within(t, 30, measure.Collapse(4*bar), 1) // a thin vessel stands next to nothing
	within(t, 0, measure.Collapse(-1*bar), 0)
}
