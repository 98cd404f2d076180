# METADATA
# title: A replacement is called in kind, and nothing shows which hose it must be like
# description: |
#   In kind means that material, rating, class and connection are those of the approved record. Without
#   the identity of the approved hose nobody can see that.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: [line.changed, "!assigned_stated"]
#   needs: [line.change_in_kind]
#   message: >-
#     The line was changed in kind, but the sheet does not say which hose it was approved with in the
#     place of {part}
#   action: "Name the assigned hose, and compare liner, braid, rating, class and ends with it."
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(l)(1)"
#       standing: published
package rules.record.in_kind_hose_without_identity

report contains {"subject": h.id, "part": h.id} if {
	input.line.changed
	input.line.change_in_kind == true
	some h in input.hoses
	not h.assigned_stated
}
