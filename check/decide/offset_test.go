package decide

import (
	"math/rand/v2"
	"reflect"
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

// fill puts something of chance into a fact, or nothing.
func fill(v reflect.Value, chance *rand.Rand) {
	if chance.IntN(3) == 0 {
		return
	}
	switch v.Kind() {
	case reflect.String:
		v.SetString("word")
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), chance.IntN(3), 3))
	case reflect.Int64:
		v.SetInt(chance.Int64N(100) - 50)
	case reflect.Bool:
		v.SetBool(chance.IntN(2) == 0)
	case reflect.Struct: // Int or Bool
		fill(v.Field(0), chance)
		fill(v.Field(1), chance)
	}
}

// TestOffsetsSayWhatReflectionSays goes through every fact of every struct that a guard can look at.
func TestOffsetsSayWhatReflectionSays(t *testing.T) {
	chance, looked := rand.New(rand.NewPCG(3, 4)), 0
	for kind := range kinds {
		for i := range kind.NumField() {
			f, err := factOf(kind.Field(i))
			if err != nil {
				assert.Equal(t, reflect.Struct, kind.Field(i).Type.Kind(), "%s.%s: %v", kind, kind.Field(i).Name, err)
				continue // a group of facts, which no guard names
			}
			for range 40 {
				s := reflect.New(kind)
				v, p := s.Elem().Field(i), s.UnsafePointer()
				fill(v, chance)
				assert.Equal(t, !f.optional || known(v), f.known(p))
				switch x := v.Interface().(type) {
				case facts.Int:
					n, is := f.number(p)
					assert.Equal(t, []any{x.V, x.Known}, []any{n, is})
				case int64:
					n, _ := f.number(p)
					assert.Equal(t, x, n)
				case bool:
					assert.Equal(t, x, f.holds(p))
				case facts.Bool:
					assert.Equal(t, x.V && (x.Known || !f.optional), f.holds(p))
				case string:
					assert.Equal(t, []string{x}, f.words(p))
				case []string:
					assert.Equal(t, []any{len(x), x}, []any{f.len(p), f.words(p)})
				default:
					assert.Equal(t, v.Len(), f.len(p))
				}
				looked++
			}
		}
	}
	assert.Greater(t, looked, 10_000)
}
