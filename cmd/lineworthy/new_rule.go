package main

import (
	"bytes"
	"embed"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"text/template"

	"github.com/spf13/cobra"
)

//go:embed templates/rule.rego templates/rule_test.rego
var ruleTemplates embed.FS

// blankRule is what the templates are filled with.
type blankRule struct {
	Package, Fault string
	Site           bool
}

func newRule(s streams) *cobra.Command {
	var site bool
	cmd := &cobra.Command{
		Use:   "rule AREA/FAULT DIR",
		Short: "Write a commented rule with its test to DIR/AREA/FAULT",
		Long: `Write a commented rule and its test, which pass as they are, to DIR/AREA/FAULT. With --site it is a rule
of the site's own: DIR is the folder that --rules names, and lineworthy rules test DIR checks it. Without,
it is a rule of this program, and DIR is its folder rules.`,
		Example: "  lineworthy new rule --site plant/margin_too_thin site-rules",
		Args:    cobra.ExactArgs(2),
		RunE:    func(_ *cobra.Command, args []string) error { return writeRule(s, site, args[0], args[1]) },
	}
	cmd.Flags().BoolVar(&site, "site", false, "a rule of the site's own")
	return cmd
}

var ruleID = regexp.MustCompile(`^[a-z][a-z0-9_]*/[a-z][a-z0-9_]*$`)

func writeRule(s streams, site bool, id, dir string) error {
	if !ruleID.MatchString(id) {
		return usage(fmt.Errorf("%q is no id of a rule: want AREA/FAULT in lower case with _ for spaces, like pressure/margin_too_thin", id))
	}
	area, fault, _ := strings.Cut(id, "/")
	if site && area == "limits" {
		return usage(fmt.Errorf("%q: limits is the name of the site's limits, choose another area", id))
	}
	b := blankRule{Package: "rules." + area + "." + fault, Fault: fault, Site: site}
	if site {
		b.Package = "site." + area + "." + fault
	}
	folder := filepath.Join(dir, area, fault)
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return usage(err)
	}
	for _, name := range []string{"rule.rego", "rule_test.rego"} {
		t, err := template.New(name).Delims("<<", ">>").ParseFS(ruleTemplates, "templates/"+name)
		if err != nil {
			return err
		}
		var text bytes.Buffer
		if err := t.Execute(&text, b); err != nil {
			return err
		}
		if err := writeNew(s, filepath.Join(folder, name), text.Bytes()); err != nil {
			return err
		}
	}
	return nil
}
