package suggest

import (
	"testing"

	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"
)

const small = `# the head
line: A-1 # beside
runs:
  r:
    parts:
      - {id: H1, kind: hose, class: old} # in one line
      # above
      - id: V1
        rated: 10 bar(g)
        inlet: {size: DN 50}
`

func edited(t *testing.T, edits ...edit) string {
	root, err := parse([]byte(small))
	require.NoError(t, err)
	text, err := changed(root, edits, "")
	require.NoError(t, err)
	again, err := changed(root, nil, "")
	require.NoError(t, err)
	require.Equal(t, small, string(again), "the sheet itself is left as it is")
	return string(text)
}

func TestEdit(t *testing.T) {
	for name, c := range map[string]struct {
		edits []edit
		want  string
	}{
		"a value":         {[]edit{put("runs.r.parts[1]", "rated", "16 bar(g)", "")}, "        rated: 16 bar(g)\n"},
		"with a note":     {[]edit{put("runs.r.parts[1]", "rated", "16 bar(g)", "to be shown")}, "        rated: 16 bar(g) # to be shown\n"},
		"a new key":       {[]edit{put("runs.r.parts[1]", "bonded", "yes", "")}, "        bonded: yes\n"},
		"a new mapping":   {[]edit{put("safeguards", "remote_stop", "yes", "")}, "safeguards:\n  remote_stop: yes\n"},
		"a list":          {[]edit{{"runs.r.parts[1]", "wetted", list("PTFE", "FFKM"), ""}}, "        wetted: [PTFE, FFKM]\n"},
		"nested":          {[]edit{put("runs.r.parts[1].inlet", "size", "NPS 2", "")}, "        inlet: {size: NPS 2}\n"},
		"flow to block":   {[]edit{put("runs.r.parts[0]", "class", "new", "why")}, "        class: new # why\n"},
		"keeps its place": {append(drop("runs.r.parts[1]", "rated"), put("runs.r.parts[1]", "rated", "6 bar(g)", "")), "      - id: V1\n        rated: 6 bar(g)\n"},
		"a text like one": {[]edit{put("runs.r.parts[1]", "name", "a: b # c", "")}, "        name: 'a: b # c'\n"},
	} {
		t.Run(name, func(t *testing.T) {
			text := edited(t, c.edits...)
			require.Contains(t, text, c.want)
			for _, comment := range []string{"# the head", "# beside", "# above"} {
				require.Contains(t, text, comment)
			}
		})
	}
	require.NotContains(t, edited(t, drop("runs.r.parts[1]", "rated", "nothing")...), "rated")
	require.Equal(t, small, edited(t, drop("runs.nowhere", "rated")...))

	root, err := parse([]byte(small))
	require.NoError(t, err)
	_, err = changed(root, []edit{put("runs.r.parts[7]", "rated", "1 bar(g)", "")}, "")
	require.EqualError(t, err, "the sheet has no runs.r.parts[7] to change")
	text, err := changed(root, nil, "# PROPOSAL\n#")
	require.NoError(t, err)
	require.Equal(t, "# PROPOSAL\n#\n"+small, string(text))
}

// TestInsert: parts come in with ends copied from their neighbours as the other edits leave them, and what an older end had
// for itself stays behind.
func TestInsert(t *testing.T) {
	tee := withEnds(noted([]string{"id", "T1", "rated", "10 bar(g)"}), "inlet", endCopy{"runs.r.parts[1].inlet", "", "CS"}, "outlet", endCopy{"runs.r.parts[1].inlet", "-", "CS"})
	parts := &yaml.Node{Kind: yaml.SequenceNode, Content: []*yaml.Node{tee}}
	in := "runs.r.parts[1].inlet"
	text := edited(t,
		put(in, "size", "DN 80", ""), put(in, "marked", "acid", ""),
		edit{in, "seal", record("kind", "o-ring", "evidence", "old sheet"), ""},
		insert("r", 1, parts),
	)
	require.Regexp(t, `(?s)id: H1.*- id: T1\n.*size: DN 80\n +material: CS\n +seal: \{kind: o-ring\} #.*outlet:\n +size: DN 80\n +material: CS\n.*- id: V1`, text)
	require.Contains(t, text, "rated: 10 bar(g) # to be shown by plate or certificate")
	require.NotContains(t, text, endTag)

	root, err := parse([]byte(small))
	require.NoError(t, err)
	_, err = changed(root, []edit{insert("r", 7, parts)}, "")
	require.EqualError(t, err, "the sheet has no runs.r.parts[7] to put a part before")
	_, err = changed(root, []edit{insert("r", 0, &yaml.Node{Kind: yaml.SequenceNode, Content: []*yaml.Node{
		withEnds(noted([]string{"id", "T1"}), "inlet", endCopy{"runs.r.parts[0].inlet", "", "CS"}, "outlet", endCopy{}),
	}})}, "")
	require.EqualError(t, err, "the sheet has no end runs.r.parts[0].inlet for a new part to match")
}
