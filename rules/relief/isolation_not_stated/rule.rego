# METADATA
# title: Nobody has said whether a valve can cut off a relief device
# description: |
#   A relief device counts only while nothing can be shut between it and what it protects.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: reliefs
#   scope: ["!isolatable_stated", "!on_vessel"]
#   needs: []
#   message: "It is not stated whether a valve can cut {part} off from what it protects"
#   action: "Look at the line and state it at the relief device."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(9)(v)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.relief.isolation_not_stated

report contains {"subject": r.id, "part": r.id} if {
	some r in input.reliefs
	not r.isolatable_stated
	not r.on_vessel
}
