package rules

import (
	"context"
	"fmt"
	"io/fs"
	"path"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/stretchr/testify/require"
)

// example fills the message with the first finding that the rule's own tests want, so that it is true of the rule.
func example(t *testing.T, l *lint) string {
	t.Helper()
	file := path.Join(l.id, "rule_test.rego")
	text, err := fs.ReadFile(here, file)
	require.NoError(t, err)
	pkg := "data.rules." + strings.ReplaceAll(l.id, "/", ".") + "_test"
	rs, err := rego.New(
		rego.Query(fmt.Sprintf("found := [x | some note; some x in %s._cases[note].want]", pkg)),
		rego.Module(l.Path, l.Text), rego.Module(file, string(text)), rego.Capabilities(Capabilities()),
		rego.SetRegoVersion(ast.RegoV1),
	).Eval(context.Background())
	require.NoError(t, err)
	require.NotEmpty(t, rs)
	found := rs[0].Bindings["found"].([]any)
	require.NotEmpty(t, found, "%s: no note of _cases wants a finding", file)
	return fill(l.rule.Message, found[0].(map[string]any))
}

func fill(message string, found map[string]any) string {
	return placeholder.ReplaceAllStringFunc(strings.TrimSpace(message), func(s string) string {
		key := strings.Trim(s, "{}")
		return shown(key, fmt.Sprint(found[key]))
	})
}

// shown is a number in its unit. Reports print it in the unit of the sheet.
func shown(key, text string) string {
	n, err := strconv.ParseInt(text, 10, 64)
	if err != nil {
		return text
	}
	switch unit("." + key) {
	case "_kpa":
		return fmt.Sprintf("%d kPa(g)", n)
	case "_ck":
		return fmt.Sprintf("%.1f °C", float64(n)/100-273.15)
	case "_mm":
		return fmt.Sprintf("%d mm", n)
	case "_days":
		return fmt.Sprintf("%d days", n)
	case "_day":
		return time.Unix(n*24*60*60, 0).UTC().Format(time.DateOnly)
	case "_ohm":
		return fmt.Sprintf("%d ohm", n)
	case "_mmps":
		return fmt.Sprintf("%.3g m/s", float64(n)/1000)
	case "_mm2ps":
		return fmt.Sprintf("%.3g m2/s", float64(n)/1e6)
	case "_ms":
		return fmt.Sprintf("%.3g s", float64(n)/1000)
	case "_n":
		return fmt.Sprintf("%d N", n)
	case "_minutes":
		return fmt.Sprintf("%d min", n)
	case "_um":
		return fmt.Sprintf("%.4g mm", float64(n)/1000)
	case "_mlps":
		return fmt.Sprintf("%.3g m3/h", float64(n)*3600/1e6)
	case "_kpac":
		return fmt.Sprintf("%.4g bar °C", float64(n)/100)
	case "_permille":
		if strings.HasSuffix(key, "_ratio_permille") {
			return fmt.Sprintf("%.1f", float64(n)/1000)
		}
		return fmt.Sprintf("%.1f %%", float64(n)/10)
	}
	return text
}
