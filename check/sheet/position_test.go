package sheet

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Every path of the base sheet with the place it is written: the key, or the value of a leaf.
func TestPositions(t *testing.T) {
	assert.Equal(t, map[string]Pos{
		"":                              {1, 1},
		"line":                          {1, 7},
		"fluids":                        {2, 1},
		"fluids.product":                {3, 3},
		"fluids.product.fluid":          {3, 20},
		"vessels":                       {4, 1},
		"vessels.drum":                  {5, 3},
		"vessels.drum.points":           {6, 5},
		"vessels.drum.points.bung":      {7, 7},
		"vessels.drum.points.bung.size": {7, 20},
		"vessels.tank":                  {8, 3},
		"runs":                          {9, 1},
		"runs.main":                     {10, 3},
		"runs.main.carries":             {11, 5},
		"runs.main.carries[0]":          {11, 15},
		"runs.main.source":              {12, 5},
		"runs.main.source.vessel":       {12, 22},
		"runs.main.source.outlet":       {12, 36},
		"runs.main.to":                  {13, 5},
		"runs.main.to.vessel":           {13, 9},
		"runs.main.parts":               {14, 5},
		"runs.main.parts[0]":            {15, 9},
		"runs.main.parts[0].id":         {15, 13},
		"runs.main.parts[0].kind":       {16, 15},
		"runs.main.parts[0].size":       {17, 15},
	}, parse(t, base).Pos)
}

func TestSealPositions(t *testing.T) {
	pos := parse(t, string(broken(t, "size: DN 25\n", "inlet: {seal: {kind: o-ring}}\n"))).Pos
	assert.Equal(t, Pos{17, 17}, pos["runs.main.parts[0].inlet.seal"])
	assert.Equal(t, Pos{17, 30}, pos["runs.main.parts[0].inlet.seal.kind"])
	pos = parse(t, string(broken(t, "size: DN 25\n", "inlet: {seal: [{kind: o-ring}, {kind: flat-washer}]}\n"))).Pos
	assert.Equal(t, Pos{17, 24}, pos["runs.main.parts[0].inlet.seal[0]"])
	assert.Equal(t, Pos{17, 47}, pos["runs.main.parts[0].inlet.seal[1].kind"])
	pos = parse(t, string(broken(t, "size: DN 25\n", "inlet: {seal: none}\n"))).Pos
	assert.Equal(t, Pos{17, 17}, pos["runs.main.parts[0].inlet.seal"])
}

// The text at every position of the template is what the path says.
func TestTemplatePositions(t *testing.T) {
	line := parse(t, string(Template()))
	rows := strings.Split(string(Template()), "\n")
	for _, run := range line.Runs {
		for _, part := range run.V.Parts {
			at := part.ID.Pos
			assert.Equal(t, part.ID.V, string([]rune(rows[at.Line-1])[at.Col-1:][:len(part.ID.V)]))
		}
		assert.True(t, strings.HasPrefix(string([]rune(rows[run.Pos.Line-1])[run.Pos.Col-1:]), run.Key+":"))
	}
}
