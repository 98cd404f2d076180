# METADATA
# title: Two ends can be joined, or nearly, and must not be
# description: |
#   A thread that runs up or a flange that takes its bolts proves nothing. These two standards look
#   alike, but seat, seal, rating or gas differ, and the joint can part under pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point"]
#   needs: [joints.mate]
#   message: "{a} and {b} look as if they fit but must not be joined: {why}"
#   action: >-
#     Fit ends of one and the same standard. Do not use an adapter between product-specific couplings or
#     cylinder outlets.
#   basis:
#     - document: EN 1092-1, ASME B16.5, ISO 228-1, CGA V-1
#       edition: ""
#       clause: "bolt circles and threads compared"
#       standing: computed
#     - document: 29 CFR 1910.253
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(1)(iii)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.look_alike_joins

report contains {"subject": j.id, "a": j.a, "b": j.b, "why": j.why} if {
	some j in input.joints
	not j.open_point
	j.mate == "stop"
}
