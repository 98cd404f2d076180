package facts

import (
	"reflect"
	"unsafe"
)

// mark tells whether an optional fact is there, read by its offset: of every line some thousand are looked at, and
// reflection takes three times as long. It says what absent says.
type mark struct {
	field  int
	offset uintptr // of the word, or of what marks an Int or Bool as known
	word   bool
}

func markOf(f reflect.StructField) mark {
	m := mark{field: f.Index[0], offset: f.Offset}
	switch f.Type {
	case reflect.TypeFor[Int]():
		m.offset += unsafe.Offsetof(Int{}.Known)
	case reflect.TypeFor[Bool]():
		m.offset += unsafe.Offsetof(Bool{}.Known)
	case reflect.TypeFor[string]():
		m.word = true
	default:
		panic("facts: whether " + f.Name + " is known cannot be told") // a new kind of optional fact needs a mark here
	}
	return m
}

// absent looks into the struct at p.
func (m *mark) absent(p unsafe.Pointer) bool {
	if m.word {
		return *(*string)(unsafe.Add(p, m.offset)) == ""
	}
	return !*(*bool)(unsafe.Add(p, m.offset))
}
