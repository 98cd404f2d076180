# METADATA
# title: Two labels for different fluids read alike
# description: |
#   Two points for different fluids, or two hoses that fit in each other's place, carry labels that a
#   hurried eye takes for one another. A coupling that does not take the hose, or a key, keeps the
#   mistake from mattering. Ids of parts are no labels and are not compared.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: labels
#   scope: ["!keyed"]
#   needs: []
#   absent: [labels.coupling]
#   message: "{a} is marked {label_a} and {b} {label_b}; {likeness}"
#   action: >-
#     Write the name of the fluid in full on both, with a shape or colour of its own, and have a
#     second person read it before coupling.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.identity.labels_too_alike

report contains {
	"subject": l.id,
	"a": l.a,
	"b": l.b,
	"label_a": l.label_a,
	"label_b": l.label_b,
	"likeness": _how[l.likeness],
} if {
	some l in input.labels
	not l.keyed

	# A coupling that nobody has stated may take the hose.
	not l.coupling == "different"
}

_how := {
	"same": "the two are the same",
	"look-alike-character": "they differ in characters that look alike",
	"transposed": "two characters have changed places",
	"last-digit": "they differ in the last digit only",
	"one-character": "they differ in one character only",
}
