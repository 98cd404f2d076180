package facts

import (
	"math/rand/v2"
	"reflect"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestMarksSayWhatReflectionSays goes through every optional fact of every collection, there and not there.
func TestMarksSayWhatReflectionSays(t *testing.T) {
	chance, looked := rand.New(rand.NewPCG(1, 2)), 0
	for name, s := range collections {
		for range 50 {
			v := reflect.New(typeOf(name)).Elem()
			for _, m := range s.optional {
				if f := v.Field(m.field); chance.IntN(2) == 0 && f.Kind() == reflect.String {
					f.SetString("x")
				} else if chance.IntN(2) == 0 && f.Kind() == reflect.Struct {
					f.Field(1).SetBool(true)
				}
			}
			var want mask
			for _, m := range s.optional {
				if looked++; absent(v.Field(m.field)) {
					want |= 1 << m.field
				}
			}
			assert.Equal(t, want, s.absent(v), name)
		}
	}
	assert.Greater(t, looked, 5000)
}

// typeOf is the struct of a collection.
func typeOf(name string) reflect.Type {
	top, _ := whole.find(name)
	t := reflect.TypeFor[Facts]().Field(top.index).Type
	for t.Kind() != reflect.Struct || t == reflect.TypeFor[Pairs]() {
		if t.Kind() == reflect.Slice {
			t = t.Elem()
			continue
		}
		t = reflect.TypeFor[Pair]()
	}
	return t
}
