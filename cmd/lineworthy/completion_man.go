package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

func newMan(s streams) *cobra.Command {
	return &cobra.Command{
		Use:     "man DIR",
		Short:   "Write the manual pages, one for each command, to a folder",
		Example: "  lineworthy man man1\n  man ./man1/lineworthy-check.1",
		Args:    cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			if err := os.MkdirAll(args[0], 0o755); err != nil {
				return usage(err)
			}
			n := 0
			var fault error
			eachCommand(c.Root(), func(sub *cobra.Command) {
				if fault != nil || sub.Hidden || sub.Name() == "help" || sub.IsAdditionalHelpTopicCommand() {
					return
				}
				n++
				fault = os.WriteFile(filepath.Join(args[0], manName(sub)+".1"), []byte(manPage(sub)), 0o644)
			})
			if fault != nil {
				return usage(fault)
			}
			_, err := fmt.Fprintf(s.err, "wrote %d pages to %s\n", n, args[0])
			return err
		},
	}
}

func manName(c *cobra.Command) string { return strings.ReplaceAll(c.CommandPath(), " ", "-") }

// manPage sets one page with the macros of man(7). It bears no date, so that equal programs give equal pages.
func manPage(c *cobra.Command) string {
	var b strings.Builder
	fmt.Fprintf(&b, ".TH %q 1 \"\" %q \"User Commands\"\n", strings.ToUpper(manName(c)), "lineworthy "+version())
	fmt.Fprintf(&b, ".SH NAME\n%s \\- %s\n", manName(c), roff(c.Short))
	fmt.Fprintf(&b, ".SH SYNOPSIS\n.B %s\n", roff(c.UseLine()))
	long := c.Long
	if long == "" {
		long = c.Short + "."
	}
	fmt.Fprintf(&b, ".SH DESCRIPTION\n%s", manText(long))
	manFlags(&b, "OPTIONS", c.NonInheritedFlags())
	manFlags(&b, "OPTIONS OF EVERY COMMAND", c.InheritedFlags())
	if c.Example != "" {
		fmt.Fprintf(&b, ".SH EXAMPLES\n.nf\n%s\n.fi\n", roff(c.Example))
	}
	manSee(&b, c)
	return b.String()
}

func manFlags(b *strings.Builder, head string, fs *pflag.FlagSet) {
	if !fs.HasAvailableFlags() {
		return
	}
	fmt.Fprintf(b, ".SH %s\n", head)
	fs.VisitAll(func(f *pflag.Flag) {
		value, use := pflag.UnquoteUsage(f)
		name := "--" + f.Name
		if f.Shorthand != "" {
			name = "-" + f.Shorthand + ", " + name
		}
		fmt.Fprintf(b, ".TP\n.B %s\n%s\n", roff(strings.TrimSpace(name+" "+value)), roff(use))
	})
}

func manSee(b *strings.Builder, c *cobra.Command) {
	var names []string
	if c.HasParent() {
		names = append(names, manName(c.Parent()))
	}
	for _, sub := range c.Commands() {
		if !sub.Hidden && sub.Name() != "help" {
			names = append(names, manName(sub))
		}
	}
	for i, n := range names {
		names[i] = ".BR " + roff(n) + " (1)"
	}
	if len(names) > 0 {
		fmt.Fprintf(b, ".SH SEE ALSO\n%s\n", strings.Join(names, " ,\n"))
	}
}

// manText keeps paragraphs; a block whose lines are set in, or in columns, is kept as it is.
func manText(text string) string {
	var b strings.Builder
	for i, para := range strings.Split(strings.TrimSpace(text), "\n\n") {
		if i > 0 {
			b.WriteString(".PP\n")
		}
		if strings.Contains(para, "  ") {
			b.WriteString(".nf\n" + roff(para) + "\n.fi\n")
			continue
		}
		b.WriteString(roff(para) + "\n")
	}
	return b.String()
}

// roff keeps text from being read as a macro.
func roff(s string) string {
	s = strings.NewReplacer(`\`, `\e`, "-", `\-`).Replace(s)
	lines := strings.Split(s, "\n")
	for i, l := range lines {
		if strings.HasPrefix(l, ".") || strings.HasPrefix(l, "'") {
			lines[i] = `\&` + l
		}
	}
	return strings.Join(lines, "\n")
}
