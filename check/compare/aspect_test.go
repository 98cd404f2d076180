package compare

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/sheet"
)

// settings are the keys that are settings of a part on purpose.
var settings = []string{"stages", "set", "flow_coefficient", "lock_up", "shutoff", "closing", "acts_on", "fine", "accuracy"}

// TestEveryKeyHasItsAspect: a key of the sheet that is about nothing would be weighed wrongly without anybody noticing.
func TestEveryKeyHasItsAspect(t *testing.T) {
	seen := 0
	var walk func(reflect.Type)
	walk = func(typ reflect.Type) {
		for typ.Kind() == reflect.Pointer || typ.Kind() == reflect.Slice {
			typ = typ.Elem()
		}
		if strings.HasPrefix(typ.Name(), "Named[") {
			f, _ := typ.FieldByName("V")
			walk(f.Type)
			return
		}
		for i := range typ.NumField() {
			f := typ.Field(i)
			key, _, _ := strings.Cut(f.Tag.Get("sheet"), ",")
			if key == "-" || typ.Name() == "Change" {
				continue
			}
			leafType := f.Type
			if leafType.Kind() == reflect.Slice {
				leafType = leafType.Elem()
			}
			if !strings.HasPrefix(leafType.Name(), "Of[") {
				walk(f.Type)
				continue
			}
			seen++
			if aspectOf(thing{}, leaf{owner: typ.Name(), name: key}) == aSetting {
				assert.True(t, typ.Name() == "Part" && slices.Contains(settings, key), "%s.%s is about nothing: list it in aspects", typ.Name(), key)
			}
		}
	}
	walk(reflect.TypeFor[sheet.Line]())
	assert.Greater(t, seen, 120)
}
