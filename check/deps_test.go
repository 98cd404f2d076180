package check_test

import (
	"encoding/json"
	"errors"
	"io"
	"os/exec"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const module = "lineworthy/"

// allowed are the project's own packages that each package may import: one way, cmd to check to rules and catalog.
var allowed = map[string][]string{
	"catalog":        {"check/units"},
	"rules":          {"check/facts"},
	"check/units":    {},
	"check/sheet":    {"check/units"},
	"check/measure":  {"check/units"},
	"check/resolve":  {"catalog", "check/sheet", "check/units"},
	"check/facts":    {"catalog", "check/measure", "check/resolve", "check/sheet", "check/units"},
	"check/decide":   {"check/facts", "rules"},
	"check/batch":    {"check", "check/decide", "check/facts", "check/sheet", "rules"},
	"check/report":   {"check/units"},
	"check/record":   {},
	"check/register": {"catalog", "check/record", "check/report", "check/sheet", "check/units"},
	"check/inspect":  {"catalog", "check/facts", "check/report", "check/resolve", "check/sheet", "check/units"},
	"check/sequence": {"catalog", "check/facts", "check/measure", "check/resolve", "check/sheet", "check/units"},
	"check/window":   {"catalog", "check", "check/facts", "check/measure", "check/report", "check/resolve", "check/sheet", "check/units"},
	"check/suggest":  {"catalog", "check", "check/facts", "check/report", "check/resolve", "check/sheet", "check/units"},
	"check/approval": {"check/report", "check/units"},
	"check":          {"catalog", "check/decide", "check/facts", "check/report", "check/resolve", "check/sheet", "check/units", "rules"},
	"check/compare":  {"catalog", "check", "check/facts", "check/report", "check/sheet", "check/units"},
	"check/explain":  {"catalog", "check", "check/facts", "check/report", "check/sheet", "check/units", "rules"},
	"cmd/lineworthy": {"catalog", "check", "check/approval", "check/batch", "check/compare", "check/decide", "check/explain", "check/facts", "check/inspect", "check/measure", "check/record", "check/register", "check/report", "check/sequence", "check/sheet", "check/suggest", "check/units", "check/window", "rules"},
}

type pkg struct {
	ImportPath string
	Imports    []string
}

// TestDependencies keeps the packages in their order and the rules engine in its two places.
func TestDependencies(t *testing.T) {
	for _, p := range packages(t) {
		name := strings.TrimPrefix(p.ImportPath, module)
		own, known := allowed[name]
		require.Truef(t, known, "package %s is not in the table of packages: is it needed?", name)
		for _, i := range p.Imports {
			if rest, ok := strings.CutPrefix(i, module); ok {
				require.Containsf(t, own, rest, "%s may not import %s", name, rest)
			}
			engine := strings.HasPrefix(i, "github.com/open-policy-agent/")
			require.Falsef(t, engine && name != "rules" && name != "check/decide", "%s imports the rules engine", name)
			require.Falsef(t, i == "net/http", "%s imports net/http", name)
			require.Falsef(t, name == "check/measure" && outside(i), "check/measure imports %s", i)
		}
	}
}

// outside says whether an import of check/measure is neither the standard library, gonum nor the project's own.
func outside(path string) bool {
	return strings.Contains(strings.SplitN(path, "/", 2)[0], ".") && !strings.HasPrefix(path, "gonum.org/v1/gonum/")
}

func packages(t *testing.T) []pkg {
	out, err := exec.Command("go", "list", "-json=ImportPath,Imports", "lineworthy/...").Output()
	require.NoError(t, err)
	var all []pkg
	for d := json.NewDecoder(strings.NewReader(string(out))); ; {
		var p pkg
		if err := d.Decode(&p); errors.Is(err, io.EOF) {
			break
		} else {
			require.NoError(t, err)
		}
		all = append(all, p)
	}
	require.True(t, slices.ContainsFunc(all, func(p pkg) bool { return p.ImportPath == module+"check/decide" }))
	return all
}
