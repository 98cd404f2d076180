package measure

import "fmt"

// OutsideError says that a method was asked beyond the range it is known for. It is missing knowledge, not a fault.
type OutsideError struct {
	What string  // what was asked
	Unit string  // unit of the numbers
	At   float64 // where it was asked
	From float64 // lowest known
	To   float64 // highest known
}

// Error says where the method ends.
func (e *OutsideError) Error() string {
	return fmt.Sprintf("%s is known from %g to %g %s, not at %.4g %s", e.What, e.From, e.To, e.Unit, e.At, e.Unit)
}
