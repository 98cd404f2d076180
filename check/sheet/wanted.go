package sheet

import (
	"reflect"
	"strings"

	"gopkg.in/yaml.v3"
)

var formNames = map[form]string{
	leafForm: "a single value", objectForm: "a mapping", namesForm: "a mapping of names", listForm: "a list",
}

// unwanted refuses a node that is written in another form than the key takes.
func (r *reader) unwanted(n *yaml.Node, v reflect.Value, f *field, at place) {
	wanted, hint := formNames[f.form], "write "+example(f, v.Type())
	switch {
	case at.path == "":
		hint = emptyHint
	case f.single && f.form == listForm:
		wanted, hint = "a mapping, a list or the word none", "write "+example(f, v.Type().Elem())
	case strings.HasSuffix(at.path, "]"):
		hint = "write " + exampleValue(f, v.Type())
	}
	r.fault(at.pos, at.path, written(n)+" where "+wanted+" is wanted", hint)
}

func written(n *yaml.Node) string {
	switch {
	case n.Kind == yaml.ScalarNode:
		return quote(n.Value) + " stands"
	case len(n.Content) == 0:
		return "nothing is listed"
	case n.Kind == yaml.SequenceNode:
		return "a list stands"
	}
	return "a mapping stands"
}

// example shows the key as it can be written.
func example(f *field, t reflect.Type) string {
	return f.key + ": " + exampleValue(f, t)
}

func exampleValue(f *field, t reflect.Type) string {
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	switch formOf(t) {
	case leafForm:
		return exampleLeaf(f, t)
	case objectForm:
		return exampleObjects[t]
	case namesForm:
		value, _ := t.Elem().FieldByName("V")
		return "{" + exampleNames[value.Type] + ": " + exampleObjects[value.Type] + "}"
	}
	return "[" + exampleValue(f, t.Elem()) + "]"
}

func exampleLeaf(f *field, t reflect.Type) string {
	if len(f.words) > 0 {
		return f.words[0]
	}
	if text, ok := exampleTexts[f.key]; ok {
		return text
	}
	value, _ := t.FieldByName("V")
	return valueTypes[value.Type].example
}

var exampleTexts = map[string]string{
	"line": "KD-104", "fluid": "butanone", "carries": "product", "id": "H1", "kind": "o-ring", "vessel": nameExample, "point": "inlet",
	"what": "gasket changed from FKM to FFKM", "material": "PTFE", "document": "supplier letter of 2026-03-02",
	"regimes": "29 CFR 1910.106", "marks": "EN 12115", "specified_for": "butanone", "wetted": "PTFE", "isolated": "RV1",
}

var exampleNames = map[reflect.Type]string{
	reflect.TypeFor[Fluid](): "product", reflect.TypeFor[Vessel](): nameExample,
	reflect.TypeFor[Run](): "liquid", reflect.TypeFor[End](): "inlet",
}

var exampleObjects = map[reflect.Type]string{
	reflect.TypeFor[Site]():         "{lowest: -5 °C, highest: 45 °C}",
	reflect.TypeFor[Fluid]():        "{fluid: butanone}",
	reflect.TypeFor[Temperatures](): "{normal: 20 °C, highest: 45 °C}",
	reflect.TypeFor[Vessel]():       "{kind: tank, volume: 5 m3}",
	reflect.TypeFor[Relief]():       "{set: 6 bar(g)}",
	reflect.TypeFor[Lay]():          "{form: u, spacing: 600 mm}",
	reflect.TypeFor[Contents]():     "{fluid: butanone}",
	reflect.TypeFor[Run]():          "{carries: [product], source: {vessel: drum}, to: day-tank, parts: [{id: H1, kind: hose}]}",
	reflect.TypeFor[Source]():       "{vessel: drum}",
	reflect.TypeFor[Target]():       "{vessel: day-tank}",
	reflect.TypeFor[Part]():         "{id: H1, kind: hose}",
	reflect.TypeFor[Layers]():       "{liner: PTFE, cover: EPDM}",
	reflect.TypeFor[End]():          "{standard: flange-en-1092-1, size: DN 25}",
	reflect.TypeFor[Test]():         "{pressure: 12 bar(g), fluid: test-water}",
	reflect.TypeFor[Seal]():         "{kind: o-ring, material: FFKM}",
	reflect.TypeFor[Nearby]():       "{vessel: day-tank, point: inlet, distance: 2 m}",
	reflect.TypeFor[Safeguards]():   "{attended: yes}",
	reflect.TypeFor[Change]():       "{what: gasket changed from FKM to FFKM}",
	reflect.TypeFor[Evidence]():     "{material: PTFE, fluid: butanone, rating: suitable, highest: 60 °C, document: supplier letter of 2026-03-02}",
}
